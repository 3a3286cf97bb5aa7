using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Makes the next state from a message. Pure: same state and message, same step.</summary>
internal static class BenchUpdate
{
    /// <summary>What is to be done when the program begins.</summary>
    internal static Step Begin(BenchState state, Moment now) => new Step(state with { Now = now }).Do(new Errand.ListJobs()).Do(new Errand.ReadDrafts());

    /// <summary>Applies a message, and the keys that waited for it.</summary>
    internal static Step Apply(BenchState state, Message message)
    {
        Step step = One(state, message);
        while (step.State is { Held.IsEmpty: false, Entry: not { Waiting: true } })
        {
            // Keys that followed a text which turns out wrong were not meant for that text.
            if (step.State.Entry is { Complaint: not null })
            {
                return step with { State = step.State with { Held = [] } };
            }

            Step next = KeyUpdate.Apply(step.State with { Held = step.State.Held.RemoveAt(0) }, step.State.Held[0]);
            step = next with { Errands = step.Errands.AddRange(next.Errands) };
        }

        return step;
    }

    private static Step One(BenchState state, Message message) => message switch
    {
        Message.Pressed pressed => KeyUpdate.Apply(state with { Now = pressed.At }, pressed.Press),
        Message.Pasted pasted => EntryUpdate.Pasted(state, pasted.Text),
        Message.Ticked ticked => ClockUpdate.Tick(state with { Now = ticked.At }),
        Message.ShelfRead read => ShelfUpdate.Read(state, read.Names),
        Message.ShelfBroken broken => new Step(state).Complain(broken.Reason),
        Message.JobsListed listed => JobListUpdate.Listed(state, listed),
        Message.JobLoaded loaded => DraftUpdate.Loaded(JobListUpdate.Loaded(state, loaded.Job)),
        Message.DraftsRead read => DraftUpdate.Read(state, read),
        Message.Recorded recorded => RecordedUpdate.Answered(state, recorded),
        Message.StoreFailed failed => RecordedUpdate.Failed(state, failed),
        Message.Exported exported => new Step(state with { Entry = null }).Say(ScreenRecordWords.Exported(exported.Path)),
        Message.WrittenElsewhere written => RecordedUpdate.WrittenElsewhere(state, written.Path),
        Message.BudgetsReckoned reckoned => new Step(reckoned.Job == state.Job?.Id ? state with { Budgets = reckoned.Budgets } : state),
        Message.MixReckoned reckoned => MixUpdate.Reckoned(state, reckoned),
        Message.PlanMoved moved => PlanUpdate.Moved(state, moved),
        Message.PlanRanked ranked => PlanUpdate.Ranked(state, ranked),
        Message.Taught taught => LessonUpdate.Taught(state, taught.Answer),
        Message.RecordMade made => RecordUpdate.Made(state, made.Answer),
        Message.PlanEnded ended => PlanUpdate.Ended(state, ended),
        Message.RunBegun begun => TouchCourse.Begun(state, begun),
        Message.RunRead read => TouchCourse.Read(state, read),
        Message.RunReleased released => TouchCourse.Logged(state, released),
        Message.CoolingKnown known => new Step(known.Turn == state.Clock.Turn ? state with { Clock = state.Clock with { CoolDown = known.CoolDown } } : state),
        Message.Faulted faulted => new Step(state).Complain(faulted.Reason),
        _ => throw new InvalidOperationException($"no rule for {message.GetType().Name}"),
    };
}
