using System.Globalization;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>Alloys and what their lead means for marking.</summary>
internal static class AlloySection
{
    /// <summary>Lays out the section.</summary>
    internal static RecordSection Of(RecordReport record)
    {
        List<RecordBlock> blocks = [];
        if (record.Alloys.Count > 0)
        {
            blocks.Add(new RecordBlock.Grid(RecordWords.AlloyColumns, [.. record.Alloys.Select(a => (IReadOnlyList<string>)
            [
                VisibleText.Of(a.Designation),
                a.Role,
                a.Touches.ToString(CultureInfo.InvariantCulture),
                a.Added is { } mass ? Numerals.Milligrams(mass) : JobWords.Unknown,
                a.LeadFraction is { } lead ? Numerals.Percent(lead) : JobWords.Unknown,
            ])]));
        }

        string marking = Marking(record);
        blocks.Add(marking == RecordWords.NoLead ? new RecordBlock.Prose(marking) : new RecordBlock.Warning(marking));
        return new RecordSection(RecordWords.AlloysHeading, blocks);
    }

    private static string Marking(RecordReport record)
    {
        bool Leaded(AlloyUse use) => use.LeadFraction > Alloy.MostLeadOfLeadFree;
        return record.Alloys.Any(a => a.LeadFraction is null) ? RecordWords.LeadUnknown
            : record.Alloys.Any(a => a.Touches > 0 && Leaded(a)) ? RecordWords.LeadBrought
            : record.Alloys.Any(Leaded) ? RecordWords.LeadArrived
            : RecordWords.NoLead;
    }
}
