using ReworkThermal.Core.Boards;
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

    /// <summary>Face of the board that the tools work on.</summary>
    public required BoardSide Side { get; init; }

    /// <summary>The words, with what was not said filled in: what a record must keep for the same boundary conditions to come out again.</summary>
    public required ToolUse Use { get; init; }

    /// <summary>What was filled in, one clause each; empty when everything was said.</summary>
    public required IReadOnlyList<string> Assumed { get; init; }

    /// <summary>What the boundary conditions rest on, one sentence each, what was assumed among them.</summary>
    public required IReadOnlyList<string> Notes { get; init; }
}
