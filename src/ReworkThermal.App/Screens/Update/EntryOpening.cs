using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Opens the text field: what is asked, the text that stands there now, and what can be chosen.</summary>
internal static class EntryOpening
{
    internal static Step Open(BenchState state, EntryFor purpose) => new(state with { Entry = Of(state, purpose) });

    internal static TextEntry Of(BenchState state, EntryFor purpose) => purpose switch
    {
        EntryFor.NewJob => TextEntry.Of(purpose, ScreenJobWords.NewJobLabel),
        EntryFor.Brief { Field: var field } => TextEntry.Of(
            purpose,
            ScreenJobWords.Field(field),
            state.Job is { } job ? BriefText.Of(job.Brief, field) : string.Empty,
            BriefText.Options(field, state.Shelf)),
        EntryFor.Pins => TextEntry.Of(purpose, ScreenJobWords.PinsToAdd) with { Hint = ScreenJobWords.PinsHint },
        EntryFor.Filter => TextEntry.Of(purpose, ScreenJobWords.FilterLabel, state.JobPlace.Filter),
        EntryFor.Note note => TextEntry.Of(purpose, ScreenJobWords.NoteLabel(note.Pad)),
        EntryFor.VoidReason reason => TextEntry.Of(purpose, ScreenRecordWords.VoidLabel(reason.Number)),
        EntryFor.TouchSeconds => TextEntry.Of(purpose, ScreenClockWords.HowLong),
        EntryFor.DropReason => TextEntry.Of(purpose, ScreenClockWords.WhyDropped),
        EntryFor.Mix { Field: var field } => TextEntry.Of(
            purpose,
            ScreenMixWords.Field(field),
            MixUpdate.Text(state.Mix.Question, field),
            MixUpdate.Options(field, state.Shelf)),
        EntryFor.Plan { Field: var field } => TextEntry.Of(
            purpose,
            ScreenPlanWords.Field(field),
            state.Plan.Form[field],
            PlanFormRules.Options(field, state.Shelf, state.Job)),
        EntryFor.Tool { Field: var field } => ToolUpdate.Opened(state, field),
        EntryFor.ExportPath => TextEntry.Of(purpose, ScreenRecordWords.ExportLabel, state.Job is { } job ? ScreenRecordWords.ExportName(job.Id) : string.Empty),
        EntryFor.Reading => TextEntry.Of(purpose, ScreenRecordWords.ReadingLabel),
        _ => throw new InvalidOperationException($"no rule for {purpose.GetType().Name}"),
    };
}
