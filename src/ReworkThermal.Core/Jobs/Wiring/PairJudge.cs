using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Works out and judges a differential pair over jumper wires.</summary>
public static class PairJudge
{
    /// <summary>Speed of light in vacuum [m/s] (SI 2019, exact).</summary>
    private const double LightMPerS = 299_792_458;

    /// <summary>Half the free-space impedance over π, as the usual two-wire formula rounds it [Ω].</summary>
    private const double TwoWireOhm = 120;

    /// <summary>Judges a pair.</summary>
    /// <param name="task">The pair.</param>
    /// <param name="kind">The wire.</param>
    /// <param name="limits">Limits.</param>
    /// <returns>Figures and concerns.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is negative, both are zero, the bit rate is not above zero, or the wires overlap.</exception>
    public static PairReport Judge(PairTask task, WireKind kind, WireLimits limits)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(limits);
        double firstM = task.FirstLeg.Meters;
        double secondM = task.SecondLeg.Meters;
        double bitsPerSecond = (double)task.BitRate.BitsPerSecond;
        if (firstM < 0 || secondM < 0 || firstM + secondM <= 0 || bitsPerSecond <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(task), "lengths must not be negative nor both zero, and the bit rate must be above zero");
        }

        double mismatchM = Math.Abs(firstM - secondM);
        double slowest = Math.Sqrt(kind.RelativePermittivity.High);
        double skewHighS = mismatchM * slowest / LightMPerS;
        double share = skewHighS * bitsPerSecond;
        (ElectricResistance? low, ElectricResistance? high) = task.Spacing is Length spacing
            ? (TwoWireImpedance(task.Gauge, spacing, kind.RelativePermittivity.High), TwoWireImpedance(task.Gauge, spacing, 1))
            : ((ElectricResistance?)null, (ElectricResistance?)null);
        return new PairReport(
            Length.FromMeters(mismatchM),
            Duration.FromSeconds(mismatchM / LightMPerS),
            Duration.FromSeconds(skewHighS),
            Duration.FromSeconds(1 / bitsPerSecond),
            share,
            low,
            high,
            [.. Concerns(task, limits, share)]);
    }

    /// <summary>Impedance of two parallel round wires: 120/√ε acosh(D/d) (textbook formula; from memory).</summary>
    /// <param name="gauge">Conductor of both.</param>
    /// <param name="spacing">Distance of the centres, above one diameter.</param>
    /// <param name="relativePermittivity">Of what the field is in, 1 or more.</param>
    /// <returns>The impedance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The wires overlap, or the permittivity is below 1.</exception>
    public static ElectricResistance TwoWireImpedance(WireGauge gauge, Length spacing, double relativePermittivity)
    {
        ArgumentNullException.ThrowIfNull(gauge);
        ArgumentOutOfRangeException.ThrowIfLessThan(relativePermittivity, 1);
        double ratio = spacing / gauge.Diameter;
        return ratio > 1
            ? ElectricResistance.FromOhms(TwoWireOhm / Math.Sqrt(relativePermittivity) * Math.Acosh(ratio))
            : throw new ArgumentOutOfRangeException(nameof(spacing), spacing.Millimeters, "the centres of the wires must be more than one diameter apart");
    }

    private static IEnumerable<PairConcern> Concerns(PairTask task, WireLimits limits, double skewShare)
    {
        if (skewShare > limits.SkewShare.Central)
        {
            yield return PairConcern.Skew;
        }

        if (task.FirstLeg.Meters <= 0 || task.SecondLeg.Meters <= 0)
        {
            yield return PairConcern.OneLegOnly;
        }

        if (task.Spacing is null)
        {
            yield return PairConcern.NotTogether;
        }

        if (task.BitRate > limits.SeldomRepairable.Central)
        {
            yield return PairConcern.SeldomRepairable;
        }
        else if (task.BitRate > limits.TryAndTest.Central)
        {
            yield return PairConcern.TryAndTest;
        }
    }
}
