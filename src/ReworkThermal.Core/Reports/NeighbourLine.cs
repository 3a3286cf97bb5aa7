using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>A part near the joint and what the run did to it.</summary>
/// <param name="Name">The part.</param>
/// <param name="Peak">Highest temperature under it.</param>
/// <param name="Limit">Highest temperature it may have; null when none is known.</param>
/// <param name="Warnings">Limits it came past or near, one sentence each; empty when all is well.</param>
public sealed record NeighbourLine(string Name, Temperature Peak, Temperature? Limit, IReadOnlyList<string> Warnings);
