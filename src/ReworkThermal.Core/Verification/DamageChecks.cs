using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Verification;

/// <summary>Laminate kinetics, worked damage sums and barrel fatigue beside independently computed figures.</summary>
/// <param name="limits">The shipped figures of damage.</param>
internal sealed class DamageChecks(DamageLimits limits)
{
    /// <summary>Rounding of the gas constant in the reference computation [1].</summary>
    private const double GasConstantRounding = 1e-6;

    /// <summary>Printed digits of the worked examples [1], and the value below which the digits are absolute.</summary>
    private const double WorkedDigits = 1e-5;
    private const double WorkedFloor = 1e-3;

    /// <summary>Half a unit of the printed strain [%], with the rounding of its inputs.</summary>
    private const double StrainRoom = 0.0501;

    /// <summary>Printed digits and unstated rounding of inputs of the cycles: one cycle, or 0.5 % above 200.</summary>
    private const double CyclesShare = 0.005;

    private static readonly Provenance _reference = new("the reference tables", EvidenceMark.Computed);

    private static readonly (double Celsius, double Seconds, bool Melts)[] _factory = [(240, 45, true), (240, 45, true), (250, 4, true)];

    /// <summary>The worked examples by name: temperature, time, and whether the joint melts.</summary>
    internal static readonly Dictionary<string, (double Celsius, double Seconds, bool Melts)[]> Work = new(StringComparer.Ordinal)
    {
        ["careful"] = [(120, 300, false), (235, 20, true), (245, 8, true), (245, 5, true)],
        ["rushed"] = [(300, 25, true), (320, 15, true), (300, 8, true)],
        ["scorch"] = [(350, 10, true)],
    };

    internal ComparedValue Delamination(ReferenceRow row)
    {
        (Duration low, Duration central, Duration high) =
            Model(row, wallUm: 20).Kinetics.TimeToDelamination(Temperature.FromDegreesCelsius(row.Number("temperature_c")));
        double computed = row["ea_kj_per_mol"] switch
        {
            "100" => low.Seconds,
            "150" => central.Seconds,
            _ => high.Seconds,
        };
        double printed = row.Number("time_s");
        return ComparedValue.Binding(
            VerificationArea.Damage,
            row,
            $"class {row["class"]}, time to delamination at {row["temperature_c"]} °C with {row["ea_kj_per_mol"]} kJ/mol",
            "s",
            printed,
            row.Number("half_digit_s") + (GasConstantRounding * printed),
            computed);
    }

    internal IEnumerable<ComparedValue> WorkedCase(ReferenceRow row)
    {
        DamageModel model = new(LaminateOf(row), WithoutDose(limits.Parameters), Pad(wallUm: 20));
        PriorHeat none = new("none", string.Empty, [], [], [], new RatedEstimate<Length>(Exactly(Length.Zero), SupportLevel.Judgement), _reference, SupportLevel.Judgement);
        PadDamage state = model.After(model.Begin(none), _factory.Concat(Work[row["case"]]).Select(s =>
            PadExposure.Steady(Temperature.FromDegreesCelsius(s.Celsius), Duration.FromSeconds(s.Seconds), s.Melts)));
        LaminateSums sums = state.Central.Laminate;
        PullCheck pull = PullChecker.Check(model, state, Temperature.FromDegreesCelsius(245), []);
        yield return Worked("laminate sum with 100 kJ/mol", string.Empty, "sum_ea100", sums.LowEnergy);
        yield return Worked("laminate sum with 150 kJ/mol", string.Empty, "sum_ea150", sums.CentralEnergy);
        yield return Worked("laminate sum with 200 kJ/mol", string.Empty, "sum_ea200", sums.HighEnergy);
        yield return Worked("adhesion kept", string.Empty, "kept", 1 - model.Budget(state).GaugeOrNull(GaugeKind.Adhesion)!.Value.Central);
        yield return Worked("force the bond holds at 245 °C", "N", "bond_n", pull.BondN.Central);
        yield return Worked("force the barrel holds at 245 °C", "N", "barrel_n", pull.BarrelN.Central);

        ComparedValue Worked(string quantity, string unit, string column, double computed)
        {
            double printed = row.Number(column);
            return ComparedValue.Binding(VerificationArea.Damage, row, $"class {row["class"]}, {row["case"]} work: {quantity}", unit, printed, WorkedDigits * Math.Max(Math.Abs(printed), WorkedFloor), computed);
        }
    }

    internal IEnumerable<ComparedValue> Barrel(ReferenceRow row)
    {
        BarrelFatigue barrel = new(LaminateOf(row), limits.Parameters.Barrel, Pad(wallUm: 25));
        Temperature peak = Temperature.FromDegreesCelsius(row.Number("peak_c"));
        string where = $"class {row["class"]}, barrel at {row["peak_c"]} °C";
        yield return ComparedValue.Binding(VerificationArea.Damage, row, $"{where}: strain", "%", row.Number("strain_percent"), StrainRoom, 100 * barrel.FreeStrain(peak));
        foreach ((string column, double gigapascals) in new[] { ("cycles_stiff", 3.4), ("cycles_soft", 0.5) })
        {
            if (row.NumberOrNull(column) is { } cycles)
            {
                double computed = barrel.CyclesToFailure(peak, Pressure.FromGigapascals(gigapascals));
                yield return ComparedValue.Binding(VerificationArea.Damage, row, FormattableString.Invariant($"{where}: cycles with {gigapascals} GPa"), string.Empty, cycles, Math.Max(1, CyclesShare * cycles), computed);
            }
        }
    }

    private static Estimate<T> Exactly<T>(T value)
        where T : struct => new(value, value, value, _reference);

    // The pad of the reference computations: 2.0 mm with a 1.0 mm hole in a board of 1.6 mm.
    private static PadGeometry.Through Pad(double wallUm) =>
        new(Length.FromMillimeters(2), Length.FromMillimeters(1), Exactly(Length.FromMicrometers(wallUm)), Length.FromMillimeters(1.6));

    // The worked cases take the whole loss for each melt and none for its heat.
    private static DamageParameters WithoutDose(DamageParameters parameters) =>
        parameters with { Adhesion = parameters.Adhesion with { DoseShare = new RatedEstimate<double>(Exactly(0.0), SupportLevel.Judgement) } };

    private DamageModel Model(ReferenceRow row, double wallUm) => new(LaminateOf(row), limits.Parameters, Pad(wallUm));

    private LaminateLimits LaminateOf(ReferenceRow row) =>
        limits.LaminateOrNull(row["class"]) ?? throw new FormatException($"{row.Table}: there is no class of laminate '{row["class"]}'");
}
