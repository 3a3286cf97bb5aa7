using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Solders;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>
/// The mix of a plan when the joint holds more or less solder than thought: the added mass stays, so its share and with it the flow
/// temperature change. Computed at a few levels of filling; a bench takes the nearest.
/// </summary>
internal sealed class FilledMixes(PhaseEngine engine, SolderProperties properties, Workload work, Plan plan)
{
    /// <summary>Number of levels.</summary>
    internal const int Levels = 13;

    // Levels are 8 % of solder apart, from 0.62 to 1.61 times the drawn amount.
    private const double LevelStep = 1.083;

    private readonly (EnthalpyCurve Curve, double FlowC)[] _levels = new (EnthalpyCurve, double)[Levels];

    /// <summary>Computes one level.</summary>
    internal void Prepare(int level)
    {
        double fill = Math.Pow(LevelStep, level - (Levels / 2));
        SolderCharge solder = work.Solder with { Amount = work.Solder.Amount * fill };
        SolderCharge mix = plan.Alloy is null ? solder : solder.With(new SolderCharge(plan.Added, plan.Alloy.Fractions));

        // Within a few percent of a mix whose melting was found, it is found; if not, the plan's own melting stands in.
        MeltingBehaviour melting = engine.MeltingOf(mix.Fractions) is MeltingOutcome.Found found ? found.Behaviour : plan.Melting;
        _levels[level] = (new SolderHeat(properties).CurveOf(melting, mix.Amount / work.Solder.Amount), melting.Flow.DegreesCelsius);
    }

    /// <summary>Curve and flow temperature at a filling.</summary>
    internal (EnthalpyCurve Curve, double FlowC) At(double fill)
    {
        int level = (int)Math.Round(Math.Log(fill) / Math.Log(LevelStep)) + (Levels / 2);
        return _levels[Math.Clamp(level, 0, Levels - 1)];
    }
}
