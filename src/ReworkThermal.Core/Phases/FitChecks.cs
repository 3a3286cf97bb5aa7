using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Core.Phases.Solving;

namespace ReworkThermal.Core.Phases;

/// <summary>Recomputes the published points that this project's own parameters were fitted to.</summary>
public static class FitChecks
{
    /// <summary>For each listed point, the temperature at which its solid is in equilibrium with its liquid.</summary>
    /// <param name="database">The data with their listed points.</param>
    /// <returns>One row per listed point, in file order.</returns>
    public static IReadOnlyList<FitComparison> Recompute(ThermodynamicDatabase database)
    {
        ArgumentNullException.ThrowIfNull(database);
        PhaseEngine engine = new(database);
        return [.. database.Systems.SelectMany(system => system.FitPoints.Select(point => new FitComparison(system, point, Celsius(engine, point))))];
    }

    private static double? Celsius(PhaseEngine engine, FitPoint point)
    {
        (EquilibriumKernel kernel, double[] overall) = engine.Prepare(point.Liquid);
        PhaseModel? model = Array.Find(kernel.System.Models, m => m.Name == point.Solid);
        return model is null ? null : new TouchSearch(kernel).Kelvin(model, overall, point.Celsius + 273.15) - 273.15;
    }
}
