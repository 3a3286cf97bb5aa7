using ReworkThermal.App.Wording;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>What arrived.</summary>
internal static class ArrivalSection
{
    /// <summary>Lays out the section.</summary>
    internal static RecordSection Of(RecordReport record)
    {
        JobState job = record.Job;
        List<RecordBlock> blocks =
        [
            new RecordBlock.Grid(["", ""],
            [
                [RecordWords.Board, Shown(job.Brief.Board)],
                [RecordWords.Joint, Shown(job.Brief.Joint)],
                [RecordWords.Connector, Shown(job.Brief.Connector)],
                [RecordWords.SolderOnArrival, Shown(job.Brief.BaseSolder)],
                [RecordWords.Opened, JobWords.Time(job.Entries[0].At) + " UTC"],
                [RecordWords.Pins, RecordWords.PinCount(job.Register.Pins.Count)],
            ]),
        ];
        List<PadLedger> seen = [.. job.Pads.Values.Where(p => p.AsArrived is not null)];
        if (seen.Count > 0)
        {
            blocks.Add(new RecordBlock.Items(
            [
                .. seen.GroupBy(p => p.AsArrived!.Value).OrderBy(g => g.Key).Select(g => RecordWords.Seen(g.Key.Word(), EventWords.Pads([.. g.Select(p => p.Pad)], string.Empty))),
            ]));
        }

        if (seen.Count < job.Pads.Count)
        {
            blocks.Add(new RecordBlock.Prose(RecordWords.NotLookedAt(job.Pads.Count - seen.Count)));
        }

        return new RecordSection(RecordWords.ArrivedHeading, blocks);
    }

    private static string Shown(string? text) => text is null ? JobWords.NotStated : VisibleText.Of(text);
}
