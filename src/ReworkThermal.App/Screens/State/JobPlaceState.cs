namespace ReworkThermal.App.Screens.State;

/// <summary>The job and its pins: first the lines of the brief, then the pads.</summary>
internal sealed record JobPlaceState
{
    /// <summary>Row that keys act on; lines of the brief come first.</summary>
    internal int Row { get; init; }

    /// <summary>Only pads whose line contains this are shown; empty for all.</summary>
    internal string Filter { get; init; } = string.Empty;
}
