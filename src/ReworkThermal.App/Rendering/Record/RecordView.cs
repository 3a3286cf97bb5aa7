using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>How a record looks on the command line, or a confirmation when it was written to files.</summary>
/// <param name="record">The record.</param>
/// <param name="written">Files it was written to; empty to show it here.</param>
/// <param name="notes">What was assumed, one sentence each.</param>
internal sealed class RecordView(RecordReport record, IReadOnlyList<string> written, IReadOnlyList<string> notes) : IRenderedReport
{
    /// <inheritdoc/>
    public string? Kept => written.Count == 0 ? null : string.Join(' ', written.Select(p => JobWords.Written(VisibleText.Of(p))));

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(RecordWords.Title(record));
        page.Paragraph(RecordWords.Subtitle(record));
        if (written.Count > 0)
        {
            foreach (string path in written)
            {
                page.Paragraph(JobWords.Written(VisibleText.Of(path)));
            }

            return;
        }

        foreach (RecordSection section in RecordSections.Of(record))
        {
            page.Heading(section.Heading);
            foreach (RecordBlock block in section.Blocks)
            {
                Write(page, block);
            }
        }

        page.List(CommonWords.Notes, notes);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        JobState job = record.Job;
        json.Text("job", job.Id.Value);
        json.Text("label", VisibleText.Of(job.Brief.Label));
        json.Text("status", JobWords.Status(job.Status));
        json.Sentences("written", written.Select(VisibleText.Of));
        json.WriteNumber("touches", job.Exposures.Count);
        json.WriteNumber("wires", job.Wires.Count);
        json.WriteBoolean("checks_proven", job.Checks.Proven);
        json.WriteStartArray("alloys");
        foreach (AlloyUse alloy in record.Alloys)
        {
            json.WriteStartObject();
            json.Text("designation", VisibleText.Of(alloy.Designation));
            json.Text("role", alloy.Role);
            json.Number("added_mass_mg", alloy.Added?.Milligrams, 3);
            json.Number("lead_mass_fraction", alloy.LeadFraction, 6);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("pads");
        foreach (PadAccount pad in record.Pads)
        {
            json.WriteStartObject();
            BudgetView.WriteMembers(json, pad);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Text("not_judged_reason", record.NotJudged);
        json.Text("final_solder", record.Final?.Solder.Fractions.ToString());
        json.Number("final_solidus_c", record.Final?.Solidus.DegreesCelsius, 2);
        json.Number("final_scheil_end_c", record.Final?.ScheilEnd?.DegreesCelsius, 2);
        json.Number("liquid_fraction_at_100c", record.Final?.LiquidAt100C, 6);
        json.Number("liquid_fraction_at_140c", record.Final?.LiquidAt140C, 6);
        json.Text("program_version", record.ProgramVersion);
        json.Text("data_fingerprint", record.DataFingerprint);
        json.Sentences("notes", record.Notes.Concat(notes));
        json.Sentences("sources", record.Sources);
    }

    private static void Write(Page page, RecordBlock block)
    {
        switch (block)
        {
            case RecordBlock.Prose prose:
                page.Paragraph(prose.Text);
                break;
            case RecordBlock.SmallPrint small:
                page.Paragraph(small.Text);
                break;
            case RecordBlock.Warning warning:
                page.Paragraph(warning.Text, lead: RecordWords.WarningMark + " ");
                break;
            case RecordBlock.Items items:
                foreach (string sentence in items.Sentences)
                {
                    page.Paragraph(sentence, lead: "- ");
                }

                break;
            case RecordBlock.Grid grid:
                page.Table(grid.Columns, grid.Rows);
                break;
            default:
                // Pictures are for the HTML record; their figures stand in the tables.
                break;
        }
    }
}
