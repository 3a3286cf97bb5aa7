namespace ReworkThermal.App.Commands;

/// <summary>What the command line asks of a triage.</summary>
/// <param name="Path">The request.</param>
/// <param name="Job">Job whose pins are meant; null when pads are counted instead.</param>
/// <param name="Store">Job store; null for the usual one.</param>
/// <param name="Pads">Number of pads; null when a job names them.</param>
/// <param name="Missing">How many of them are gone.</param>
/// <param name="Loose">How many of them are loose.</param>
/// <param name="Plan">Number of the plan to work by.</param>
internal sealed record TriageWish(string Path, string? Job, string? Store, int? Pads, int Missing, int Loose, int Plan);
