using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>The tools of one touch as boundary conditions.</summary>
public sealed record TouchTools
{
    /// <summary>A tip on the joint; null when there is none.</summary>
    public required TipSource? Tip { get; init; }

    /// <summary>A jet on the joint; null when there is none.</summary>
    public required JetSource? Jet { get; init; }

    /// <summary>Heat from below; null when there is none.</summary>
    public required BottomHeat? Preheat { get; init; }

    /// <summary>Temperature of a bath of molten solder that the joint was dipped in; null when there was none.</summary>
    public required Temperature? Bath { get; init; }

    /// <summary>Temperature of the board when contact began, unless it is settled over a preheater.</summary>
    public required Temperature Start { get; init; }

    /// <summary>The room.</summary>
    public required Surroundings Room { get; init; }

    /// <summary>What was assumed, one sentence each.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}
