using System.Collections.Concurrent;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Verification;

/// <summary>
/// Computes every shipped published figure anew. Start reading this room here: each table has its checks, a check turns a row into
/// comparisons, and a comparison knows its own verdict.
/// </summary>
public static class VerificationRun
{
    /// <summary>Runs all checks, on all cores; the answer does not depend on their number.</summary>
    /// <param name="tables">The published figures.</param>
    /// <param name="database">Thermodynamic data, with the reactions listed in them.</param>
    /// <param name="properties">Rules for density.</param>
    /// <param name="limits">Figures of damage.</param>
    /// <param name="practice">Cases of practice by the names that the table gives them.</param>
    /// <param name="citations">Full citations of the sources that the thermodynamic data name by key.</param>
    /// <param name="cancellation">Breaks the run off.</param>
    /// <returns>All comparisons, in the order of the tables.</returns>
    /// <exception cref="OperationCanceledException">The run was broken off.</exception>
    /// <exception cref="FormatException">A shipped table does not fit the program.</exception>
    public static IReadOnlyList<ComparedValue> Run(
        ReferenceTables tables,
        ThermodynamicDatabase database,
        SolderProperties properties,
        DamageLimits limits,
        IReadOnlyDictionary<string, JointProblem> practice,
        IReadOnlyDictionary<string, string> citations,
        CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(database);
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(practice);
        ArgumentNullException.ThrowIfNull(citations);
        PhaseEngine engine = new(database);
        MeltingChecks melting = new(engine, properties);
        DamageChecks damage = new(limits);
        CopperChecks copper = new(engine, limits.Parameters.Copper);
        GrowthChecks growth = new(copper, new IntermetallicGrowth(limits.Parameters.Intermetallic));
        List<Func<IEnumerable<ComparedValue>>> work =
        [
            .. tables.Melting.Select<ReferenceRow, Func<IEnumerable<ComparedValue>>>(row => () => melting.Ranges(row)),
            .. tables.MixedJoints.Select<ReferenceRow, Func<IEnumerable<ComparedValue>>>(row => () => melting.EndOfFreezing(row)),
            () => InvariantChecks.Recompute(database).Select(row => MeltingChecks.Reaction(row, citations)),
            () => tables.Density.Select(melting.Density),
            .. tables.HeatFlow.GroupBy(row => row["case"]).Select<IGrouping<string, ReferenceRow>, Func<IEnumerable<ComparedValue>>>(rows => () => HeatFlowChecks.Case([.. rows])),
            .. tables.Joints.GroupBy(row => row["case"]).Select<IGrouping<string, ReferenceRow>, Func<IEnumerable<ComparedValue>>>(rows => () => HeatFlowChecks.Joint([.. rows])),
            .. tables.Practice.Select<ReferenceRow, Func<IEnumerable<ComparedValue>>>(row => () => [PracticeChecks.Row(row, practice[row["case"]])]),
            () => tables.Delamination.Select(damage.Delamination),
            () => tables.WorkedCases.SelectMany(damage.WorkedCase),
            () => tables.CopperSolubility.Select(copper.Solubility),
            () => tables.CopperRates.SelectMany(copper.Rates),
            () => tables.Growth.Select(growth.Row),
            () => tables.Barrels.SelectMany(damage.Barrel),
            () => tables.Wires.SelectMany(WireChecks.Gauge),
        ];
        ConcurrentDictionary<int, IReadOnlyList<ComparedValue>> found = new();
        _ = Parallel.For(0, work.Count, new ParallelOptions { CancellationToken = cancellation }, i => found[i] = [.. work[i]()]);
        return [.. Enumerable.Range(0, work.Count).SelectMany(i => found[i])];
    }
}
