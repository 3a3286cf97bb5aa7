using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The record: entries and checks.</summary>
internal static class RecordUpdate
{
    internal static Step Apply(BenchState state, Press press)
    {
        if (state.Job is not { } job)
        {
            return new Step(state).Complain(ScreenWords.OpenJobFirst);
        }

        return press switch
        {
            { Letter: 'c' } or { Kind: PressKind.Tab } => new Step(state with { Record = state.Record with { ShowsChecks = !state.Record.ShowsChecks } }),
            { Letter: 'n' } => EntryOpening.Open(state, new EntryFor.Note(null)),
            { Letter: 'x' } => EntryOpening.Open(state, new EntryFor.ExportPath()),
            { Letter: 'w' } => Write(state, job, replace: false),
            _ => state.Record.ShowsChecks ? Checks(state, job, press) : Entries(state, job, press),
        };
    }

    /// <summary>Answers whether files that are there may be replaced.</summary>
    internal static Step Replace(BenchState state, Press press) => press.Letter == 'y' && state.Job is { } job
        ? Write(state, job, replace: true)
        : new Step(state).Say(ScreenRecordWords.Untouched);

    internal static Step Made(BenchState state, RecordAnswer answer) => answer switch
    {
        RecordAnswer.Written written => new Step(state).Say(ScreenRecordWords.Written(written.Paths)),
        RecordAnswer.Exists there => new Step(state with { Record = state.Record with { There = there.Paths }, Overlay = Overlay.ReplaceRecord }),
        RecordAnswer.Failed failed => new Step(state).Complain(failed.Reason),
        _ => throw new InvalidOperationException("unknown kind of answer"),
    };

    private static Step Write(BenchState state, JobState job, bool replace) =>
        new Step(state).Do(new Errand.WriteRecord(job, replace)).Say(ScreenRecordWords.Writing);

    private static Step Entries(BenchState state, JobState job, Press press)
    {
        int row = Math.Min(state.Record.EntryRow, job.Entries.Count - 1);
        if (press.Letter == 'v')
        {
            JobEntry entry = job.Entries[job.Entries.Count - 1 - row];
            return job.Voided.ContainsKey(entry.Number)
                ? new Step(state).Complain(ScreenRecordWords.VoidAlready(entry.Number))
                : EntryOpening.Open(state, new EntryFor.VoidReason(entry.Number));
        }

        return Rows.After(row, job.Entries.Count, press) is int next
            ? new Step(state with { Record = state.Record with { EntryRow = next } })
            : new Step(state);
    }

    private static Step Checks(BenchState state, JobState job, Press press)
    {
        IReadOnlyList<CheckLine> lines = job.Checks.Lines;
        int row = Math.Min(state.Record.CheckRow, Math.Max(0, lines.Count - 1));
        if (Rows.After(row, lines.Count, press) is int next)
        {
            return new Step(state with { Record = state.Record with { CheckRow = next } });
        }

        return lines.Count == 0 ? new Step(state) : press.Letter switch
        {
            'p' => Judged(state, lines, row, CheckResult.Pass),
            'f' => Judged(state, lines, row, CheckResult.Fail),
            'r' => EntryOpening.Open(state, new EntryFor.Reading(lines[row].Check)),
            _ => new Step(state),
        };
    }

    private static Step Judged(BenchState state, IReadOnlyList<CheckLine> lines, int row, CheckResult result) =>
        new Step(state with { Record = state.Record with { CheckRow = Math.Min(row + 1, lines.Count - 1) } })
            .Record(new JobEvent.CheckDone(lines[row].Check, result, null, null))
            .Say(ScreenRecordWords.Judged(lines[row], result));
}
