namespace ReworkThermal.App.Rendering.Record;

/// <summary>A section of a record.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Blocks">Its pieces, at least one.</param>
internal sealed record RecordSection(string Heading, IReadOnlyList<RecordBlock> Blocks);
