using System.Globalization;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Turns a text being typed into a draft, and finds the field of a draft again.</summary>
internal static class DraftField
{
    /// <summary>The text being typed as a draft.</summary>
    /// <returns>Null when nothing is being typed that was not there before.</returns>
    internal static Draft? Of(BenchState state)
    {
        if (state.Entry is not { } entry || string.IsNullOrWhiteSpace(entry.Text) || entry.Text == entry.Before)
        {
            return null;
        }

        (string field, string of) = Name(entry.For);
        JobState? job = entry.For is EntryFor.NewJob ? null : state.Job;
        return new Draft(job?.Id.Value, job?.Brief.Label ?? string.Empty, state.Place.ToString(), field, of, entry.Label, entry.Text);
    }

    /// <summary>The field of a draft.</summary>
    /// <returns>Null when there is no such field any more, as when an interrupted touch was completed meanwhile.</returns>
    internal static EntryFor? Find(Draft draft, JobState? job) => (draft.Field, job) switch
    {
        ("new-job", _) => new EntryFor.NewJob(),
        ("mix", _) when Known(draft.Of, out MixField field) => new EntryFor.Mix(field),
        ("plan", _) when Known(draft.Of, out PlanField field) => new EntryFor.Plan(field),
        ("tool", _) when Known(draft.Of, out ToolField field) => new EntryFor.Tool(field),
        ("brief", not null) when Known(draft.Of, out BriefField field) => new EntryFor.Brief(field),
        ("pins", not null) => new EntryFor.Pins(),
        ("filter", not null) => new EntryFor.Filter(),
        ("export", not null) => new EntryFor.ExportPath(),
        ("note", { } known) when draft.Of.Length == 0 || known.Pads.Keys.Any(p => p.Value == draft.Of) =>
            new EntryFor.Note(draft.Of.Length == 0 ? null : new PadId(draft.Of)),
        ("void", { } known) when known.Entries.FirstOrDefault(e => Number(e.Number) == draft.Of) is { } entry => new EntryFor.VoidReason(entry.Number),
        ("touch", { } known) when Open(known, draft) is { } touch => new EntryFor.TouchSeconds(touch),
        ("drop", { } known) when Open(known, draft) is { } touch => new EntryFor.DropReason(touch),
        ("reading", { } known) when known.Checks.Lines.FirstOrDefault(l => Name(l.Check) == draft.Of) is { } line => new EntryFor.Reading(line.Check),
        _ => null,
    };

    private static (string Field, string Of) Name(EntryFor purpose) => purpose switch
    {
        EntryFor.NewJob => ("new-job", string.Empty),
        EntryFor.Mix mix => ("mix", mix.Field.ToString()),
        EntryFor.Plan plan => ("plan", plan.Field.ToString()),
        EntryFor.Tool tool => ("tool", tool.Field.ToString()),
        EntryFor.Brief brief => ("brief", brief.Field.ToString()),
        EntryFor.Pins => ("pins", string.Empty),
        EntryFor.Filter => ("filter", string.Empty),
        EntryFor.ExportPath => ("export", string.Empty),
        EntryFor.Note note => ("note", note.Pad?.Value ?? string.Empty),
        EntryFor.VoidReason reason => ("void", Number(reason.Number)),
        EntryFor.TouchSeconds touch => ("touch", Number(touch.Touch.Number)),
        EntryFor.DropReason drop => ("drop", Number(drop.Touch.Number)),
        EntryFor.Reading reading => ("reading", Name(reading.Check)),
        _ => throw new InvalidOperationException($"no rule for {purpose.GetType().Name}"),
    };

    private static string Name(ElectricalCheck check) => $"{check.GetType().Name} {string.Join(' ', check.Probed)}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static Logged<TouchStart>? Open(JobState job, Draft draft) => job.OpenTouches.FirstOrDefault(t => Number(t.Number) == draft.Of);

    private static bool Known<T>(string text, out T value)
        where T : struct, Enum => Enum.TryParse(text, out value) && Enum.IsDefined(value);
}
