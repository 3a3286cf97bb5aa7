using System.Collections.Immutable;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>What an update gives: the next state, and what is to be done outside.</summary>
internal readonly record struct Step(BenchState State, ImmutableList<Errand> Errands)
{
    internal Step(BenchState state)
        : this(state, [])
    {
    }

    internal Step Do(Errand errand) => this with { Errands = Errands.Add(errand) };

    /// <summary>Hands an event to the store.</summary>
    internal Step Record(JobEvent what, RecordedFor? purpose = null) => RecordAll([what], purpose);

    /// <summary>Hands events to the store. Nothing without an open job.</summary>
    internal Step RecordAll(IReadOnlyList<JobEvent> events, RecordedFor? purpose = null) => State.Job is { } job
        ? new Step(
            State with { Unanswered = State.Unanswered + 1 },
            Errands.Add(new Errand.Record(job.Id, events, purpose ?? RecordedFor.ItsOwnSake)))
        : this;

    internal Step Say(string text) => this with { State = State with { Notice = Notice.Said(text) } };

    internal Step Complain(string text) => this with { State = State with { Notice = Notice.Complaint(text) } };
}
