using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>What the store's answers do.</summary>
internal static class RecordedUpdate
{
    internal static Step Answered(BenchState state, Message.Recorded recorded)
    {
        BenchState answered = state with { Unanswered = Math.Max(0, state.Unanswered - 1) };
        return recorded.Outcome switch
        {
            RecordOutcome.Recorded { State: { } job, Entry: { } entry } when answered.Job is null || answered.Job.Id != job.Id =>
                recorded.Purpose.Kind == RecordedForKind.Entry && entry.What is JobEvent.JobOpened
                    ? Opened(answered, job)
                    : new Step(answered),
            RecordOutcome.Recorded { State: { } job, Entry: { } entry } => Kept(answered, job, entry, recorded.Purpose),
            RecordOutcome.Refused refused => NotKept(answered, ScreenWords.Refused(refused.Reason), recorded.Purpose),
            RecordOutcome.NoSuchJob => NotKept(answered, ScreenWords.JobGone, recorded.Purpose),
            _ => new Step(answered),
        };
    }

    internal static Step Failed(BenchState state, Message.StoreFailed failed)
    {
        BenchState next = state with { StoreTrouble = failed.Reason, Unanswered = failed.Purpose is null ? state.Unanswered : Math.Max(0, state.Unanswered - 1) };
        return NotKept(next, failed.Reason, failed.Purpose);
    }

    /// <summary>The text that waited is there again, for another try.</summary>
    internal static Step WrittenElsewhere(BenchState state, string path)
    {
        string told = ScreenWords.WrittenElsewhere(path);
        TextEntry? waits = (state.Entry?.For as EntryFor.StorePath)?.Waits;
        return new Step(state with { StoreTrouble = null, Entry = waits is null ? null : waits with { Complaint = null, Hint = told } }).Say(told);
    }

    private static Step Opened(BenchState state, JobState job)
    {
        Step step = JobListUpdate.Loaded(state with { Entry = null, Place = Place.Job }, job);
        return step.Do(new Errand.ListJobs()).Say(ScreenJobWords.JobOpened);
    }

    private static Step Kept(BenchState state, JobState job, JobEntry entry, RecordedFor purpose)
    {
        BenchState next = state with { Job = job, StoreTrouble = null };
        if (purpose.Kind == RecordedForKind.Entry && next.Entry is { Waiting: true })
        {
            next = next with { Entry = null, Notice = Notice.Said(ScreenWords.Kept) };
        }

        next = entry.What is JobEvent.BriefRevised or JobEvent.PriorHeatStated ? ShelfUpdate.FromJob(next) : next;
        Step step = TouchCourse.Kept(next, entry, purpose);
        bool changesHeat = entry.What is not (JobEvent.NoteTaken or JobEvent.CautionsShown or JobEvent.CheckDone or JobEvent.TouchStarted or JobEvent.MeasurementTaken);
        step = changesHeat ? step.Do(new Errand.ReckonBudgets(job)) : step;
        step = LessonUpdate.Kept(step, job, entry, purpose);
        return entry.What is JobEvent.BriefRevised && next.Mix.Turn > 0 ? MixUpdate.Ask(step.State, step.State.Mix.Question, step.Errands) : step;
    }

    private static Step NotKept(BenchState state, string reason, RecordedFor? purpose)
    {
        BenchState next = purpose?.Kind switch
        {
            RecordedForKind.Entry when state.Entry is { } entry => state with { Entry = entry with { Waiting = false, Complaint = reason } },
            RecordedForKind.TouchStart when state.Clock.Turn == purpose.Turn => TouchCourse.Aborted(state),
            RecordedForKind.TouchEnd when state.Clock is { Stage: TouchStage.Released } && state.Clock.Turn == purpose.Turn =>
                state with { Clock = state.Clock with { Stage = new TouchStage.Ready() } },
            _ => state,
        };
        string told = state.Clock.Stage is TouchStage.Released lost && purpose?.Kind == RecordedForKind.TouchEnd
            ? ScreenClockWords.NotLogged(lost.Length, reason)
            : reason;
        return new Step(next with { Entry = next.Entry is { Waiting: true } waiting && purpose is null ? waiting with { Waiting = false, Complaint = reason } : next.Entry, Drafts = next.Drafts with { Taking = null } }).Complain(told);
    }
}
