using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>Turns a cooling path into a melt curve and finds the flow temperature on it.</summary>
internal sealed class MeltCurveBuilder(EquilibriumKernel kernel, double[] overall, IReadOnlyList<Assemblage> states)
{
    // Where the enthalpies of the stable solid elements are zero.
    private const double LowestKelvin = 298.15;

    private const double FrozenStepKelvin = 25;
    private const double LiquidStepKelvin = 50;
    private const double LiquidToKelvin = 773.15;
    private const double RootAccuracyKelvin = 1e-5;

    private readonly MassBasis _mass = new(kernel, overall);

    /// <summary>Builds the curve, by rising temperature.</summary>
    internal MeltCurve Build()
    {
        List<MeltCurvePoint> points = [];
        Assemblage solidus = states[^1];
        for (double kelvin = LowestKelvin; kelvin < solidus.Kelvin - 1; kelvin += FrozenStepKelvin)
        {
            points.Add(Point(solidus, kelvin));
        }

        for (int i = states.Count - 1; i >= 0; i--)
        {
            bool repeats = i < states.Count - 1 && states[i].Kelvin == states[i + 1].Kelvin && SamePhases(states[i], states[i + 1]);
            if (!repeats)
            {
                points.Add(Point(states[i], states[i].Kelvin));
            }
        }

        Assemblage liquid = states[0];
        double top = Math.Max(LiquidToKelvin, liquid.Kelvin + LiquidStepKelvin);
        for (double kelvin = liquid.Kelvin + LiquidStepKelvin; kelvin < top + LiquidStepKelvin; kelvin += LiquidStepKelvin)
        {
            points.Add(Point(liquid, kelvin));
        }

        return new MeltCurve(points);
    }

    /// <summary>Temperature [K] of the first solid: the liquidus.</summary>
    internal double LiquidusKelvin()
    {
        for (int i = 0; i < states.Count; i++)
        {
            if (states[i].Phases.Exists(p => !p.Model.IsLiquid))
            {
                return states[i].Kelvin;
            }
        }

        return states[^1].Kelvin;
    }

    /// <summary>Temperature [K] at which a given share of the mass is liquid, on heating for the last time.</summary>
    internal double KelvinAtLiquidFraction(double share)
    {
        for (int i = 1; i < states.Count; i++)
        {
            double below = _mass.LiquidMassFraction(states[i]);
            if (below >= share)
            {
                continue;
            }

            double above = _mass.LiquidMassFraction(states[i - 1]);
            double high = states[i - 1].Kelvin;
            double low = states[i].Kelvin;
            if (high - low < RootAccuracyKelvin || above <= share)
            {
                return high;
            }

            Assemblage start = states[i - 1];
            return Brent.TryFindRoot(k => FractionAt(start, k, share, low, high, below, above), low, high, RootAccuracyKelvin, 60, out double root)
                ? root
                : low + ((high - low) * (share - below) / (above - below));
        }

        return states[^1].Kelvin;
    }

    /// <summary>Heat [J/kg] to melt the solid of the solidus completely at that temperature.</summary>
    internal double LatentJoulePerKilogram()
    {
        Assemblage solidus = states[^1];
        PhaseState liquid = new LiquidusSearch(kernel).Liquid(overall, solidus.Kelvin).Phases[0];
        return _mass.JoulePerKilogram([liquid], solidus.Kelvin) - _mass.JoulePerKilogram(solidus);
    }

    private double FractionAt(Assemblage start, double kelvin, double share, double low, double high, double below, double above)
    {
        if (kelvin <= low)
        {
            return below - share;
        }

        if (kelvin >= high)
        {
            return above - share;
        }

        Assemblage trial = start.Copy();
        trial.Kelvin = kelvin;
        return kernel.Solver.TrySolve(trial, overall)
            ? _mass.LiquidMassFraction(trial) - share
            : below + ((above - below) * (kelvin - low) / (high - low)) - share;
    }

    private MeltCurvePoint Point(Assemblage state, double kelvin) => new(
        Temperature.FromKelvins(kelvin),
        _mass.LiquidMassFraction(state),
        SpecificEnergy.FromJoulesPerKilogram(_mass.JoulePerKilogram(state.Phases, kelvin)),
        _mass.Shares(state));

    private static bool SamePhases(Assemblage a, Assemblage b) =>
        a.Phases.Count(p => p.Amount > 0) == b.Phases.Count(p => p.Amount > 0) && Math.Abs(a.LiquidAmount - b.LiquidAmount) < 1e-12;
}
