using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Rendering;

/// <summary>How an import looks.</summary>
/// <param name="summary">What it added.</param>
internal sealed class ImportView(ImportSummary summary) : IRenderedReport
{
    /// <inheritdoc/>
    public string Kept => StoreWords.Imported(summary.NewJobs, summary.NewEntries, summary.KnownEntries);

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(StoreWords.ImportTitle);
        page.Paragraph(Kept);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.WriteNumber("new_jobs", summary.NewJobs);
        json.WriteNumber("new_entries", summary.NewEntries);
        json.WriteNumber("known_entries", summary.KnownEntries);
    }
}
