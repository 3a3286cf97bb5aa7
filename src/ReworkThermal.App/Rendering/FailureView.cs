using System.Text.Json;

namespace ReworkThermal.App.Rendering;

/// <summary>A question that was understood but has no computed answer.</summary>
/// <param name="title">What was asked.</param>
/// <param name="reason">Why there is no answer, one sentence.</param>
internal sealed class FailureView(string title, string reason) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        page.Heading(title);
        page.Paragraph(reason);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("title", title);
        json.WriteBoolean("converged", false);
        json.Text("reason", reason);
    }
}
