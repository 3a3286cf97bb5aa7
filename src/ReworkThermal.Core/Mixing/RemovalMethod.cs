using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>A way of taking molten solder out of a joint: braid, pump, vacuum tool.</summary>
/// <param name="Name">Trade word for it.</param>
/// <param name="Efficiency">Share of the molten solder that one go takes away, 0 to 100 %.</param>
/// <param name="Note">What moves the share up or down.</param>
public sealed record RemovalMethod(string Name, Estimate<Ratio> Efficiency, string Note)
{
    /// <summary>The braid between tip and joint; null for a tool that draws the solder without one.</summary>
    public BraidStrip? Strip { get; init; }

    /// <summary>Molten solder that it takes a second, above zero.</summary>
    public required Estimate<MassFlow> Rate { get; init; }
}
