using ReworkThermal.Core.Damage;
using UnitsNet;
using UnitsNet.Units;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>The careful, rushed and scorch cases through the whole model; source in damage-worked-cases.csv.</summary>
public sealed class DamageWorkedExampleTests
{
    private const double Tolerance = 1e-5;

    private static readonly Dictionary<string, (double Celsius, double Seconds, bool Melts)[]> _cases = new()
    {
        ["careful"] = [(120, 300, false), (235, 20, true), (245, 8, true), (245, 5, true)],
        ["rushed"] = [(300, 25, true), (320, 15, true), (300, 8, true)],
        ["scorch"] = [(350, 10, true)],
    };

    [Fact]
    public void Sums_bond_and_forces_agree_with_every_row()
    {
        (double, double, bool)[] factory = [(240, 45, true), (240, 45, true), (250, 4, true)];
        foreach (IReadOnlyDictionary<string, string> row in DamageReference.Rows("damage-worked-cases.csv"))
        {
            DamageModel model = DamageBench.Model(row["class"]);
            IEnumerable<PadExposure> exposures = factory.Concat(_cases[row["case"]].Select(c => (c.Celsius, c.Seconds, c.Melts))).Select(Steady);
            PadDamage state = model.After(model.Begin(DamageBench.Untouched), exposures);
            LaminateSums sums = state.Central.Laminate;
            Close(row.Number("sum_ea100"), sums.LowEnergy);
            Close(row.Number("sum_ea150"), sums.CentralEnergy);
            Close(row.Number("sum_ea200"), sums.HighEnergy);
            HeatBudget budget = model.Budget(state);
            Close(row.Number("sum_ea150"), budget.GaugeOrNull(GaugeKind.Laminate)!.Value.Central);
            Close(1 - row.Number("kept"), budget.GaugeOrNull(GaugeKind.Adhesion)!.Value.Central);
            PullCheck pull = PullChecker.Check(model, state, DamageBench.Celsius(245), []);
            Close(row.Number("bond_n"), pull.BondN.Central);
            Close(row.Number("barrel_n"), pull.BarrelN.Central);
        }
    }

    /// <summary>Over the whole range of activation energies careful work stays far below the other two, and class A fares worst.</summary>
    [Fact]
    public void What_holds_over_the_whole_range_holds_here()
    {
        foreach (string laminate in new[] { "A", "B", "C" })
        {
            Spread careful = Spent(laminate, "careful");
            Assert.True(careful.High < Spent(laminate, "rushed").Central);
            Assert.True(careful.High < Spent(laminate, "scorch").Central);
        }

        foreach (string name in _cases.Keys)
        {
            Assert.True(Spent("A", name).Central > Spent("B", name).Central);
            Assert.True(Spent("B", name).Central > Spent("C", name).Central);
        }
    }

    private static Spread Spent(string laminate, string name)
    {
        DamageModel model = DamageBench.Model(laminate);
        PadDamage state = model.After(model.Begin(DamageBench.Untouched), _cases[name].Select(c => Steady((c.Celsius, c.Seconds, c.Melts))));
        return model.Budget(state).GaugeOrNull(GaugeKind.Laminate)!.Value;
    }

    private static PadExposure Steady((double Celsius, double Seconds, bool Melts) step) =>
        PadExposure.Steady(new Temperature(step.Celsius, TemperatureUnit.DegreeCelsius), Duration.FromSeconds(step.Seconds), step.Melts);

    private static void Close(double expected, double actual) =>
        Assert.True(Math.Abs(expected - actual) <= Tolerance * Math.Max(Math.Abs(expected), 1e-3), $"expected {expected}, got {actual}");
}
