using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Boundaries;
using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>One continuous contact of a tool with the joint.</summary>
public sealed record Touch
{
    /// <summary>When it begins, from the start of the run, zero or later.</summary>
    public required Duration Start { get; init; }

    /// <summary>How long it lasts, above zero.</summary>
    public required Duration Span { get; init; }

    /// <summary>Face of the board the tools work on.</summary>
    public required BoardSide Side { get; init; }

    /// <summary>A tip on the joint; null when there is none.</summary>
    public TipSource? Tip { get; init; }

    /// <summary>A jet on the joint; null when there is none.</summary>
    public JetSource? Jet { get; init; }

    /// <summary>Braid between the tip and the joint; null when the tip touches the joint itself.</summary>
    public BraidLayer? Braid { get; init; }

    /// <summary>When it ends.</summary>
    public Duration End => Start + Span;
}
