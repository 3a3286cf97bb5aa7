using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Rendering;

/// <summary>How a restored store is confirmed.</summary>
/// <param name="summary">What it holds.</param>
internal sealed class RestoreView(RestoreSummary summary) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(StoreWords.RestoreTitle(VisibleText.Of(summary.Store)));
        page.Paragraph(StoreWords.Restored(summary.Jobs, summary.Entries));
        page.Paragraph(summary.Kept is { } kept ? StoreWords.KeptAs(VisibleText.Of(kept)) : StoreWords.NothingToKeep);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("store", VisibleText.Of(summary.Store));
        json.WriteNumber("jobs", summary.Jobs);
        json.WriteNumber("entries", summary.Entries);
        if (summary.Kept is { } kept)
        {
            json.Text("kept", VisibleText.Of(kept));
        }
        else
        {
            json.WriteNull("kept");
        }
    }
}
