using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Verification;
using UnitsNet;
using UnitsNet.Units;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>What holds for the careful, rushed and scorch cases over the whole range of activation energies.</summary>
public sealed class DamageWorkedExampleTests
{
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

        foreach (string name in DamageChecks.Work.Keys)
        {
            Assert.True(Spent("A", name).Central > Spent("B", name).Central);
            Assert.True(Spent("B", name).Central > Spent("C", name).Central);
        }
    }

    private static Spread Spent(string laminate, string name)
    {
        DamageModel model = DamageBench.Model(laminate);
        PadDamage state = model.After(model.Begin(DamageBench.Untouched), DamageChecks.Work[name].Select(c => Steady((c.Celsius, c.Seconds, c.Melts))));
        return model.Budget(state).GaugeOrNull(GaugeKind.Laminate)!.Value;
    }

    private static PadExposure Steady((double Celsius, double Seconds, bool Melts) step) =>
        PadExposure.Steady(new Temperature(step.Celsius, TemperatureUnit.DegreeCelsius), Duration.FromSeconds(step.Seconds), step.Melts);
}
