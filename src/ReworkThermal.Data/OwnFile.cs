namespace ReworkThermal.Data;

/// <summary>A data file of the user's own folder.</summary>
/// <param name="Name">Name below the folder, such as <c>alloys/dilution/mine.toml</c>.</param>
/// <param name="Path">Full path.</param>
/// <param name="StandsIn">Whether it stands in for a shipped file.</param>
public sealed record OwnFile(string Name, string Path, bool StandsIn);
