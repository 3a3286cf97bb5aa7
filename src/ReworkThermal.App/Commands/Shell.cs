using ReworkThermal.App.Screens.Running;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Commands;

/// <summary>What a command may touch of the world outside: two text streams, the data that came with the program, a clock.</summary>
/// <param name="Out">Answers.</param>
/// <param name="Error">Complaints and progress.</param>
/// <param name="Data">Folders with alloys and profiles.</param>
/// <param name="Width">Columns available for text, at least 40.</param>
/// <param name="UseColour">Whether answers may carry colour and weight.</param>
/// <param name="ShowsProgress">Whether a long run may report its progress on <paramref name="Error"/>.</param>
/// <param name="ShowsTrace">Whether a fault of the program is shown with its stack trace.</param>
/// <param name="Cancellation">Signalled when the user breaks off.</param>
/// <param name="Screens">Runs the terminal UI and answers null, or why it cannot; null where there can be none, as in a test.</param>
internal sealed record Shell(
    TextWriter Out,
    TextWriter Error,
    DataRoot Data,
    int Width,
    bool UseColour,
    bool ShowsProgress,
    bool ShowsTrace,
    CancellationToken Cancellation,
    Func<ScreenOptions, string?>? Screens = null)
{
    /// <summary>Gives the time of recording.</summary>
    internal TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Names new jobs.</summary>
    internal IIdSource Ids { get; init; } = new RandomIdSource();
}
