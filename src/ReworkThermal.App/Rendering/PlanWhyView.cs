using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Plans;

namespace ReworkThermal.App.Rendering;

/// <summary>How the reasons of one plan look.</summary>
/// <param name="report">The whole answer.</param>
/// <param name="number">Number of the plan, from 1.</param>
/// <param name="lines">Its reasons.</param>
internal sealed class PlanWhyView(PlanReport report, int number, IReadOnlyList<WhyLine> lines) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        PlanPage.Write(page, number, report.Plans[number - 1]);
        foreach (IGrouping<string, WhyLine> step in lines.GroupBy(l => l.Step))
        {
            page.Heading(PlanWords.WhyHeading(step.Key));
            foreach (WhyLine line in step)
            {
                page.Paragraph(line.Figure, lead: "- ");
                page.Paragraph(line.How, indent: 4);
                page.Paragraph(PlanWords.RestsOn(line.RestsOn), indent: 4);
            }
        }

        page.Sources(report.Sources);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.WriteNumber("plan", number);
        json.Text("kind", report.Plans[number - 1].Kind);
        json.WriteStartArray("why");
        foreach (WhyLine line in lines)
        {
            json.WriteStartObject();
            json.Text("step", line.Step);
            json.Text("figure", line.Figure);
            json.Text("how", line.How);
            json.Text("rests_on", line.RestsOn);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Sentences("sources", report.Sources);
    }
}
