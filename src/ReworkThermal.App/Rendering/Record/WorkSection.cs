using System.Globalization;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>What was done, entry by entry; looks on arrival and single checks have sections of their own.</summary>
internal static class WorkSection
{
    private const char NoBreak = '\u00a0';

    /// <summary>Lays out the section.</summary>
    internal static RecordSection Of(RecordReport record)
    {
        JobState job = record.Job;
        int firstHeat = job.Exposures.Count > 0 ? job.Exposures[0].Number : int.MaxValue;
        List<IReadOnlyList<string>> rows = [];
        foreach (JobEntry entry in job.Entries)
        {
            bool isElsewhere = entry.What is JobEvent.CheckDone or JobEvent.CautionsShown || (entry.What is JobEvent.PadStateSeen && entry.Number < firstHeat);
            if (!isElsewhere || job.Voided.ContainsKey(entry.Number))
            {
                rows.Add(
                [
                    entry.Number.ToString(CultureInfo.InvariantCulture),
                    JobWords.Time(entry.At).Replace(' ', NoBreak),
                    EventWords.Of(entry.What) + (job.Voided.TryGetValue(entry.Number, out VoidedEntry? voided) ? RecordWords.Voided(VisibleText.Of(voided.Reason)) : string.Empty),
                ]);
            }
        }

        return new RecordSection(RecordWords.DoneHeading, [new RecordBlock.Grid(RecordWords.WorkColumns, rows)]);
    }
}
