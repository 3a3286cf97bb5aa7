using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Rendering;

/// <summary>Confirms that a file was written.</summary>
/// <param name="path">Its path.</param>
internal sealed class WrittenView(string path) : IRenderedReport
{
    /// <inheritdoc/>
    public string Kept => JobWords.Written(VisibleText.Of(path));

    /// <inheritdoc/>
    public void WriteText(Page page) => page.Paragraph(Kept);

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json) => json.Text("written", VisibleText.Of(path));
}
