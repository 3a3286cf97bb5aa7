using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Commands;

/// <summary>An event as the command line asks for it.</summary>
internal abstract record EventWish
{
    private EventWish()
    {
    }

    /// <summary>The event; whether it fits the job is judged when it is recorded.</summary>
    /// <param name="What">What happened.</param>
    internal sealed record Wanted(JobEvent What) : EventWish;

    /// <summary>The words do not make an event.</summary>
    /// <param name="Reason">What is wrong and what would be right.</param>
    internal sealed record Refused(string Reason) : EventWish;
}
