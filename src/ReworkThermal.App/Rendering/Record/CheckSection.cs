using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Reports.Records;
using CheckLine = ReworkThermal.Core.Jobs.Checking.CheckLine;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>Electrical checks: what is proven, and what is not.</summary>
internal static class CheckSection
{
    /// <summary>Lays out the section.</summary>
    internal static RecordSection Of(RecordReport record)
    {
        CheckProgress checks = record.Job.Checks;
        if (checks.Lines.Count == 0)
        {
            return new RecordSection(JobWords.ChecksHeading, [new RecordBlock.Prose(RecordWords.NoChecks)]);
        }

        List<RecordBlock> blocks =
        [
            checks.Proven
                ? new RecordBlock.Prose(RecordWords.AllProven(checks.Lines.Count))
                : new RecordBlock.Warning(RecordWords.NotProven(JobWords.Coverage(checks.Passed, checks.Failed, checks.Open, checks.Stale))),
        ];
        List<(int Number, CheckLine Line)> open = [.. checks.Lines.Select((l, i) => (i + 1, l)).Where(l => l.l.Standing != CheckStanding.Passed)];
        if (open.Count > 0)
        {
            blocks.Add(new RecordBlock.Grid(ChecksWords.Columns, [.. open.Select(o => ChecksView.Row(o.Number, o.Line))]));
        }

        if (checks.Passed > 0)
        {
            blocks.Add(new RecordBlock.Prose(RecordWords.PassedList(checks.Lines
                .Where(l => l.Standing == CheckStanding.Passed)
                .Select(l => EventWords.Of(l.Check) + EventWords.Reading(l.Last?.What.Reading)))));
        }

        return new RecordSection(JobWords.ChecksHeading, blocks);
    }
}
