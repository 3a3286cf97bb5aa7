using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Rendering;

/// <summary>How a list of jobs looks.</summary>
/// <param name="jobs">The jobs, in the order they were opened.</param>
internal sealed class JobListView(IReadOnlyList<JobHeader> jobs) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(JobWords.JobsTitle);
        if (jobs.Count == 0)
        {
            page.Paragraph(JobWords.NoJobs);
            return;
        }

        page.Table(JobWords.JobColumns, [.. jobs.Select(j => (IReadOnlyList<string>)
        [
            j.Id.Value,
            VisibleText.Of(j.Brief.Label),
            JobWords.Status(j.Status),
            JobWords.Time(j.OpenedAt),
            JobWords.Time(j.LastAt),
            j.LastNumber.ToString(CultureInfo.InvariantCulture),
        ])]);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.WriteStartArray("jobs");
        foreach (JobHeader job in jobs)
        {
            json.WriteStartObject();
            json.Text("job", job.Id.Value);
            json.Text("label", VisibleText.Of(job.Brief.Label));
            json.Text("status", JobWords.Status(job.Status));
            json.WriteString("opened_at", job.OpenedAt.UtcDateTime);
            json.WriteString("last_entry_at", job.LastAt.UtcDateTime);
            json.WriteNumber("entries", job.LastNumber);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
