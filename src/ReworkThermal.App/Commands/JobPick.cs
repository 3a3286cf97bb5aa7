using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Commands;

/// <summary>A job chosen by what was typed.</summary>
internal abstract record JobPick
{
    private JobPick()
    {
    }

    /// <summary>One job.</summary>
    /// <param name="State">The job.</param>
    /// <param name="Notes">What was assumed, one sentence each.</param>
    internal sealed record Picked(JobState State, IReadOnlyList<string> Notes) : JobPick;

    /// <summary>None, or more than one.</summary>
    /// <param name="Reason">What is wrong and what would be right.</param>
    internal sealed record Refused(string Reason) : JobPick;
}
