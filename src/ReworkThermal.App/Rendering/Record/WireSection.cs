using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>Jumper wires.</summary>
internal static class WireSection
{
    /// <summary>Lays out the section.</summary>
    internal static RecordSection Of(RecordReport record) => new(WireWords.ListTitle,
    [
        new RecordBlock.Items([.. record.Job.Wires.Select(w => RecordWords.Wire(w.What.From.Value, w.What.To.Value, EventWords.Of(w.What)))]),
        .. record.Job.Wires.Any(w => w.What.Pair is not null) ? (RecordBlock[])[new RecordBlock.Prose(WireWords.PairCaution)] : [],
    ]);
}
