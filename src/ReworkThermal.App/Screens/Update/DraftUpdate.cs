using System.Collections.Immutable;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Offers what was being typed when the program ended: taken up in its field, thrown away, or put off until the next start.</summary>
internal static class DraftUpdate
{
    internal static Step Read(BenchState state, Message.DraftsRead read)
    {
        Step step = new(state with { Drafts = state.Drafts with { Left = [.. read.Drafts] } });
        return read.Complaint is { } complaint ? step.Complain(complaint) : step;
    }

    /// <summary>Whether the draft's job is in the store, or it needs none.</summary>
    internal static bool HasJob(BenchState state, Draft draft) => draft.Job is null || Header(state, draft) is not null;

    internal static Step Answer(BenchState state, Draft draft, Press press) => press switch
    {
        { Kind: PressKind.Enter } or { Letter: 'y' } => Take(state, draft),
        { Letter: 'n' } => Without(state, draft).Say(ScreenWords.DraftThrownAway),
        { Kind: PressKind.Escape } => new Step(state with { Drafts = state.Drafts with { PutOff = true } }).Say(ScreenWords.DraftPutOff),
        _ => new Step(state),
    };

    /// <summary>A job was read, perhaps for a draft.</summary>
    internal static Step Loaded(Step step)
    {
        if (step.State.Drafts.Taking is not { } draft || draft.Job != step.State.Job?.Id.Value)
        {
            return step;
        }

        Step open = Open(step.State, draft);
        return open with { Errands = step.Errands.AddRange(open.Errands) };
    }

    private static Step Take(BenchState state, Draft draft) =>
        draft.Job is null || draft.Job == state.Job?.Id.Value ? Open(state, draft)
        : Header(state, draft) is { } header
            ? new Step(state with { Drafts = state.Drafts with { Taking = draft } }).Do(new Errand.LoadJob(header.Id))
            : new Step(state);

    /// <summary>Opens the draft's field; where that is gone the text becomes a note, so that it is not lost.</summary>
    private static Step Open(BenchState state, Draft draft)
    {
        EntryFor? field = DraftField.Find(draft, state.Job);
        EntryFor purpose = field ?? (state.Job is null ? new EntryFor.NewJob() : new EntryFor.Note(null));
        Place place = field is not null && Enum.TryParse(draft.Place, out Place was) && Enum.IsDefined(was) ? was : Place.Job;
        TextEntry entry = EntryOpening.Of(state, purpose) with { Text = string.Empty, Caret = 0 };
        return Without(state with { Place = place, Entry = entry.Insert(draft.Text) }, draft);
    }

    private static Step Without(BenchState state, Draft draft)
    {
        ImmutableList<Draft> left = state.Drafts.Left?.Remove(draft) ?? [];
        return new Step(state with { Drafts = state.Drafts with { Left = left, Taking = null } }).Do(new Errand.KeepDrafts(left));
    }

    private static JobHeader? Header(BenchState state, Draft draft) => state.Jobs.Jobs?.FirstOrDefault(j => j.Id.Value == draft.Job);
}
