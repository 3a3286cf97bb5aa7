using ReworkThermal.Core.HeatFlow;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>A heat-flow case read from a file.</summary>
public abstract record HeatCase
{
    private HeatCase()
    {
    }

    /// <summary>How fine to solve it.</summary>
    public required SolverSettings Settings { get; init; }

    /// <summary>A textbook problem with explicit materials and conditions.</summary>
    /// <param name="Problem">The problem, ready to solve.</param>
    public sealed record Posed(PosedProblem Problem) : HeatCase;

    /// <summary>A joint on a profile board. Its solder may still have to be looked up by its designation.</summary>
    /// <param name="Solder">The solder as the file gives it.</param>
    /// <param name="With">The problem with a solder's heat content and flow temperature, ready to solve.</param>
    /// <param name="Assumptions">What the tools assumed, one sentence each.</param>
    public sealed record OnBoard(
        SolderChoice Solder,
        Func<EnthalpyCurve, Temperature, JointProblem> With,
        IReadOnlyList<string> Assumptions) : HeatCase;
}
