using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.State;

/// <summary>The list of jobs.</summary>
internal sealed record JobListState
{
    /// <summary>Jobs, latest work first; null while they are being read.</summary>
    internal IReadOnlyList<JobHeader>? Jobs { get; init; }

    /// <summary>Whether the list is shown although a job is open.</summary>
    internal bool Shown { get; init; }

    /// <summary>Row that keys act on.</summary>
    internal int Row { get; init; }
}
