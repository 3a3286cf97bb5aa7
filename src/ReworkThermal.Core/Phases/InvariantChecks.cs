using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Core.Phases.Solving;

namespace ReworkThermal.Core.Phases;

/// <summary>Recomputes the reactions that the data files list.</summary>
public static class InvariantChecks
{
    /// <summary>
    /// Cools each listed composition and looks for the point at which exactly the listed phases coexist.
    /// </summary>
    /// <param name="database">The data with their listed reactions.</param>
    /// <returns>One row per listed reaction, in file order.</returns>
    public static IReadOnlyList<InvariantComparison> Recompute(ThermodynamicDatabase database)
    {
        ArgumentNullException.ThrowIfNull(database);
        PhaseEngine engine = new(database);
        return [.. database.Systems.SelectMany(system => system.Invariants.Select(listed => Compare(engine, system, listed)))];
    }

    private static InvariantComparison Compare(PhaseEngine engine, SystemDescription system, ListedInvariant listed)
    {
        (EquilibriumKernel kernel, double[] overall) = engine.Prepare(listed.Through);
        CoolingPath path = new(kernel, overall);
        _ = path.Follow(engine.LowestKelvin);
        string[] wanted = [.. listed.Phases.Order(StringComparer.Ordinal)];
        foreach (Formation formation in path.Formations)
        {
            IEnumerable<string> met = formation.Before.Phases.Append(formation.Joining).Select(p => p.Model.Name).Order(StringComparer.Ordinal);
            if (met.SequenceEqual(wanted, StringComparer.Ordinal))
            {
                PhaseState liquid = formation.Before.Phases.Find(p => p.Model.IsLiquid)!;
                MassBasis mass = new(kernel, overall);
                return new InvariantComparison(system, listed, formation.Before.Kelvin - 273.15, mass.Composition(liquid));
            }
        }

        return new InvariantComparison(system, listed, null, null);
    }
}
