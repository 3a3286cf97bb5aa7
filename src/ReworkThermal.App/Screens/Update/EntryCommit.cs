using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using UnitsNet;

namespace ReworkThermal.App.Screens.Update;

/// <summary>
/// Judges a text when Enter is pressed. What is wrong is said beside the field and goes no further; what is right goes to the store
/// at once, and the field closes when the store has answered.
/// </summary>
internal static class EntryCommit
{
    internal static Step Commit(BenchState state, TextEntry entry) => entry.For switch
    {
        EntryFor.NewJob => NewJob(state, entry),
        EntryFor.Brief brief => Brief(state, entry, brief.Field),
        EntryFor.Pins => Pins(state, entry),
        EntryFor.Filter => new Step(state with { Entry = null, JobPlace = state.JobPlace with { Filter = entry.Text.Trim() } }),
        EntryFor.Note note => Keep(state, entry, ScreenWords.TextNeeded, t => new JobEvent.NoteTaken(t, note.Pad)),
        EntryFor.VoidReason reason => Keep(state, entry, ScreenWords.ReasonNeeded, t => new JobEvent.EntryVoided(reason.Number, t)),
        EntryFor.DropReason drop => Keep(state, entry, ScreenWords.ReasonNeeded, t => new JobEvent.TouchDropped(drop.Touch.Number, t)),
        EntryFor.TouchSeconds touch => Seconds(state, entry, touch.Touch),
        EntryFor.Mix mix => MixUpdate.Typed(state, entry, mix.Field),
        EntryFor.Plan plan => PlanUpdate.Typed(state, entry, plan.Field),
        EntryFor.Tool tool => ToolUpdate.Typed(state, entry, tool.Field),
        EntryFor.ExportPath => Export(state, entry),
        EntryFor.StorePath => string.IsNullOrWhiteSpace(entry.Text)
            ? Wrong(state, entry, ScreenRecordWords.PathNeeded)
            : new Step(state with { Entry = entry with { Waiting = true } }).Do(new Errand.WriteElsewhere(entry.Text.Trim())),
        EntryFor.Reading reading => Reading(state, entry, reading.Check),
        _ => throw new InvalidOperationException($"no rule for {entry.For.GetType().Name}"),
    };

    /// <summary>Leaves the field open with what is wrong.</summary>
    internal static Step Wrong(BenchState state, TextEntry entry, string complaint) => new(state with { Entry = entry with { Complaint = complaint } });

    private static Step NewJob(BenchState state, TextEntry entry) => string.IsNullOrWhiteSpace(entry.Text)
        ? Wrong(state, entry, ScreenJobWords.LabelNeeded)
        : new Step(state with { Entry = entry with { Waiting = true }, Unanswered = state.Unanswered + 1 })
            .Do(new Errand.OpenJob(new JobBrief(entry.Text.Trim())));

    private static Step Brief(BenchState state, TextEntry entry, BriefField field) =>
        state.Job is not { } job ? new Step(state with { Entry = null })
        : BriefText.Fault(field, entry.Text, state.Shelf) is { } fault ? Wrong(state, entry, fault)
        : BriefText.With(job.Brief, field, entry.Text) is { } brief && brief == job.Brief ? new Step(state with { Entry = null })
        : new Step(state with { Entry = entry with { Waiting = true } })
            .Record(new JobEvent.BriefRevised(BriefText.With(job.Brief, field, entry.Text)), RecordedFor.Entry);

    private static Step Pins(BenchState state, TextEntry entry) => state.Job is not { } job
        ? new Step(state with { Entry = null })
        : PinList.Read(entry.Text, job) switch
        {
            PinListReading.Refused refused => Wrong(state, entry, refused.Reason),
            PinListReading.Accepted accepted => new Step(state with { Entry = entry with { Waiting = true } }).RecordAll(accepted.Events, RecordedFor.Entry),
            _ => throw new InvalidOperationException("unknown kind of reading"),
        };

    private static Step Keep(BenchState state, TextEntry entry, string ifEmpty, Func<string, JobEvent> what) => string.IsNullOrWhiteSpace(entry.Text)
        ? Wrong(state, entry, ifEmpty)
        : new Step(state with { Entry = entry with { Waiting = true } }).Record(what(entry.Text.Trim()), RecordedFor.Entry);

    private static Step Seconds(BenchState state, TextEntry entry, Logged<TouchStart> touch) =>
        Update.Typed.Number(entry.Text, 0.1, 3600, "s", out double seconds) is { } complaint
            ? Wrong(state, entry, complaint)
            : TouchCourse.Complete(state, touch, TimeSpan.FromSeconds(seconds));

    private static Step Export(BenchState state, TextEntry entry) =>
        state.Job is not { } job ? new Step(state with { Entry = null })
        : string.IsNullOrWhiteSpace(entry.Text) ? Wrong(state, entry, ScreenRecordWords.PathNeeded)
        : new Step(state with { Entry = entry with { Waiting = true } }).Do(new Errand.Export(job.Id, entry.Text.Trim()));

    private static Step Reading(BenchState state, TextEntry entry, ElectricalCheck check)
    {
        string text = entry.Text.Trim();
        MeterReading? reading = null;
        if (string.Equals(text, ScreenRecordWords.OverRange, StringComparison.OrdinalIgnoreCase))
        {
            reading = new MeterReading.OverRange();
        }
        else if (Update.Typed.Number(text, 0, AskLimits.MostOhms, "ohm", out double ohms) is { } complaint)
        {
            return Wrong(state, entry, ScreenRecordWords.OrOverRange(complaint));
        }
        else
        {
            reading = new MeterReading.Shown(ElectricResistance.FromOhms(ohms));
        }

        CheckLine? line = state.Job?.Checks.Lines.FirstOrDefault(l => l.Check == check);
        return line?.Last is { What: { } last }
            ? new Step(state with { Entry = entry with { Waiting = true } }).Record(last with { Reading = reading }, RecordedFor.Entry)
            : Wrong(state, entry, ScreenRecordWords.JudgeFirst);
    }
}
