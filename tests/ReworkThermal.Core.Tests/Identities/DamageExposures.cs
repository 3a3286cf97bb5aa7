using FsCheck;
using FsCheck.Fluent;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tests.Published;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>Random touches: a few samples between 25 and 400 °C over at most a minute or so, melted when they pass 200 °C.</summary>
public static class DamageExposures
{
    public static Arbitrary<PadExposure> Exposure() => Touch().ToArbitrary();

    public static Arbitrary<PadExposure[]> Exposures() =>
        Gen.Choose(1, 5).SelectMany(n => Touch().ArrayOf(n)).ToArbitrary();

    internal static PadExposure Make(double[] steps, double[] celsius, bool wholeBoard, bool known)
    {
        double[] seconds = new double[steps.Length];
        for (int i = 1; i < steps.Length; i++)
        {
            seconds[i] = seconds[i - 1] + steps[i];
        }

        TemperatureHistory history = new(seconds, celsius);
        bool melted = history.PeakCelsius >= 200;
        MoltenContact? charge = melted && known ? DamageBench.Charge(DamageSolubilityFit.Mix, 0.001, 7800, 0.2, SolderMotion.Still, 200) : null;
        return new PadExposure(history, melted, charge, wholeBoard ? HeatedRegion.WholeBoard : HeatedRegion.Local, ExposureStart.AfterCooling);
    }

    private static Gen<PadExposure> Touch() =>
        from n in Gen.Choose(2, 7)
        from steps in Gen.Choose(1, 200).Select(i => i / 10.0).ArrayOf(n)
        from celsius in Gen.Choose(25, 400).Select(i => (double)i).ArrayOf(n)
        from wholeBoard in Gen.Elements(true, false)
        from known in Gen.Elements(true, true, false)
        select Make(steps, celsius, wholeBoard, known);
}
