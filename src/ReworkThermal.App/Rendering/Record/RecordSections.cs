using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>What a record says, section by section; HTML, Markdown and text are written from this alone. Start reading this folder here.</summary>
internal static class RecordSections
{
    /// <summary>Lays out a record.</summary>
    /// <param name="record">The record.</param>
    /// <returns>Its sections.</returns>
    internal static IReadOnlyList<RecordSection> Of(RecordReport record) =>
    [
        ArrivalSection.Of(record),
        WorkSection.Of(record),
        AlloySection.Of(record),
        HeatSection.Of(record),
        FinalSection.Of(record),
        CheckSection.Of(record),
        .. record.Job.Wires.Count > 0 ? (RecordSection[])[WireSection.Of(record)] : [],
        new RecordSection(RecordWords.CautionsHeading, [new RecordBlock.Items(RecordWords.Cautions)]),
        BasisSection.Of(record),
    ];
}
