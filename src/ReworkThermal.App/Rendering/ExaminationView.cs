using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Rendering;

/// <summary>How an examination of the job store looks.</summary>
/// <param name="path">The store.</param>
/// <param name="examination">What was found.</param>
internal sealed class ExaminationView(string path, StoreExamination examination) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(StoreWords.CheckTitle(VisibleText.Of(path)));
        page.Paragraph(StoreWords.Counts(examination.Jobs, examination.Entries, examination.FormatVersion));
        if (examination.Problems.Count == 0)
        {
            page.Paragraph(StoreWords.Sound);
        }

        page.List(StoreWords.Problems, [.. examination.Problems.Select(VisibleText.Of)]);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("store", VisibleText.Of(path));
        json.WriteNumber("jobs", examination.Jobs);
        json.WriteNumber("entries", examination.Entries);
        json.WriteNumber("format_version", examination.FormatVersion);
        json.WriteBoolean("sound", examination.Problems.Count == 0);
        json.Sentences("problems", examination.Problems.Select(VisibleText.Of));
    }
}
