using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Data;

namespace ReworkThermal.App.Rendering;

/// <summary>A report that rests on files of the user's own folder, with a mark that says so.</summary>
/// <param name="report">The report.</param>
/// <param name="own">The files, at least one.</param>
internal sealed class OwnDataMark(IRenderedReport report, IReadOnlyList<OwnFile> own) : IRenderedReport
{
    /// <inheritdoc/>
    public string? Kept => report.Kept;

    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        report.WriteText(page);
        page.List(OwnDataWords.Title, OwnDataWords.Sentences(own));
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        report.WriteJson(json);
        json.Sentences("own_data", OwnDataWords.Sentences(own));
    }
}
