using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Mechanisms;

/// <summary>
/// Copper dissolving into molten solder by the Nernst-Brunner law, dw/dt = k (A/V)(ws(T) - w), depth rate k (rhoL/rhoCu)(ws - w).
/// Self-limiting in a small charge, unlimited in a bath. The form is reported for copper in Sn-Ag solder (Chada et al., abstract); the
/// coefficient is a fit. Solder that is over-full after cooling gives nothing back to the pad.
/// </summary>
internal static class CopperDissolution
{
    // Steps in which the solubility is taken at the middle [K]; it changes by under 4 % over one step, so that the error of the
    // midpoint rule stays below 0.01 %.
    private const double MostStepK = 2;

    // Largest share of the time constant of a closed charge per step while the temperature moves.
    private const double MostRelaxation = 0.25;

    /// <summary>Copper after a history.</summary>
    /// <param name="before">Copper before it.</param>
    /// <param name="history">Interface temperature.</param>
    /// <param name="charge">The solder.</param>
    /// <param name="rate">k [m/s].</param>
    /// <param name="solubilityFactor">Factor on the solubility.</param>
    /// <param name="copperDensity">Density of copper [kg/m3].</param>
    /// <returns>Copper after it.</returns>
    internal static CopperTrack After(CopperTrack before, TemperatureHistory history, MoltenContact charge, double rate, double solubilityFactor, double copperDensity)
    {
        double held = charge.FreshCopper ?? before.Held
            ?? throw new ArgumentException("the first charge on a pad needs its copper content", nameof(charge));
        Bath bath = new(charge, rate, solubilityFactor, charge.LiquidDensity.KilogramsPerCubicMeter / copperDensity);
        double lost = before.LostM;
        ReadOnlySpan<double> seconds = history.Seconds;
        ReadOnlySpan<double> celsius = history.Celsius;
        for (int i = 1; i < seconds.Length; i++)
        {
            (double from, double to, double time) = MoltenPart(celsius[i - 1], celsius[i], seconds[i] - seconds[i - 1], bath.MoltenAboveC);
            if (time > 0)
            {
                bath.Work(from, to, time, ref held, ref lost);
            }
        }

        return new CopperTrack(lost, held);
    }

    /// <summary>Time that a history spends at or above a temperature [s].</summary>
    internal static double SecondsAbove(TemperatureHistory history, double thresholdC)
    {
        ReadOnlySpan<double> seconds = history.Seconds;
        ReadOnlySpan<double> celsius = history.Celsius;
        double total = 0;
        for (int i = 1; i < seconds.Length; i++)
        {
            total += MoltenPart(celsius[i - 1], celsius[i], seconds[i] - seconds[i - 1], thresholdC).Time;
        }

        return total;
    }

    private static (double From, double To, double Time) MoltenPart(double from, double to, double time, double threshold)
    {
        if (from < threshold && to < threshold)
        {
            return (from, to, 0);
        }

        double share = from >= threshold && to >= threshold ? 1 : (Math.Max(from, to) - threshold) / Math.Abs(to - from);
        return (Math.Max(from, threshold), Math.Max(to, threshold), share * time);
    }

    private readonly struct Bath(MoltenContact charge, double rate, double solubilityFactor, double densityRatio)
    {
        private readonly double? _volumeToAreaM = charge.VolumeToArea?.Meters;

        internal double MoltenAboveC { get; } = charge.MoltenAbove.DegreesCelsius;

        internal void Work(double from, double to, double time, ref double held, ref double lost)
        {
            double span = Math.Abs(to - from);
            double relaxation = _volumeToAreaM is { } depth && span > 0 ? rate * time / depth / MostRelaxation : 0;
            int steps = Math.Max(1, (int)Math.Ceiling(Math.Max(span / MostStepK, Math.Min(relaxation, 10_000))));
            double step = time / steps;
            for (int i = 0; i < steps; i++)
            {
                double celsius = from + ((i + 0.5) / steps * (to - from));
                double drive = Math.Max(0, (solubilityFactor * charge.Solubility.SaturationMassFraction(celsius)) - held);
                if (_volumeToAreaM is { } volumeToArea)
                {
                    double gained = drive * (1 - Math.Exp(-rate * step / volumeToArea));
                    held += gained;
                    lost += gained * volumeToArea * densityRatio;
                }
                else
                {
                    lost += rate * densityRatio * drive * step;
                }
            }
        }
    }
}

/// <summary>Figures of copper dissolving in molten solder.</summary>
/// <param name="StillRate">Mass-transfer coefficient in still solder [m/s].</param>
/// <param name="FlowingRate">Mass-transfer coefficient in flowing or stirred solder [m/s].</param>
/// <param name="SolubilityFactor">Factor on a computed solubility: 1 with its range.</param>
/// <param name="NickelFactor">Factor on both rates in solder that holds nickel, above 0 and at most 1.</param>
/// <param name="LeastWall">Least copper that should be left at the knee [m].</param>
/// <param name="HotStrength">Tensile strength of hot hole copper [Pa].</param>
/// <param name="CopperDensity">Density of copper [kg/m3].</param>
public sealed record CopperParameters(
    RatedEstimate<Speed> StillRate,
    RatedEstimate<Speed> FlowingRate,
    RatedEstimate<double> SolubilityFactor,
    RatedEstimate<double> NickelFactor,
    RatedEstimate<Length> LeastWall,
    RatedEstimate<Pressure> HotStrength,
    RatedEstimate<Density> CopperDensity);

/// <summary>Copper taken from a pad and held by the solder on it.</summary>
/// <param name="LostM">Depth of copper dissolved so far [m].</param>
/// <param name="Held">Copper in the present charge [kg/kg]; null before any charge is known.</param>
internal readonly record struct CopperTrack(double LostM, double? Held);
