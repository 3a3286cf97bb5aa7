namespace ReworkThermal.Core.Evidence;

/// <summary>Where a number comes from.</summary>
/// <param name="Source">Key into the bibliography of its folder (<c>sources.toml</c>), or a plain phrase such as "common practice, no source".</param>
/// <param name="Mark">How well the number is supported.</param>
public sealed record Provenance(string Source, EvidenceMark Mark);
