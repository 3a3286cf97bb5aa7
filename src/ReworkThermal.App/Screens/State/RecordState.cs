namespace ReworkThermal.App.Screens.State;

/// <summary>The record.</summary>
internal sealed record RecordState
{
    /// <summary>Whether the checks are shown instead of the entries.</summary>
    internal bool ShowsChecks { get; init; }

    /// <summary>Row of the entries, counted from the last one.</summary>
    internal int EntryRow { get; init; }

    /// <summary>Files of the record that are there already, while it is asked whether to replace them.</summary>
    internal IReadOnlyList<string> There { get; init; } = [];

    /// <summary>Row of the checks.</summary>
    internal int CheckRow { get; init; }
}
