using System.Text.Json;

namespace ReworkThermal.App.Rendering;

/// <summary>A report that knows how to look. Writing it changes nothing and depends on nothing but the report.</summary>
internal interface IRenderedReport
{
    /// <summary>What the command kept, for whoever cannot be shown the report; null when it kept nothing.</summary>
    public string? Kept => null;

    /// <summary>Writes the report for a reader.</summary>
    /// <param name="page">Where to write.</param>
    public void WriteText(Page page);

    /// <summary>Writes the members of the report's JSON object; the braces are written by the caller.</summary>
    /// <param name="json">Where to write.</param>
    public void WriteJson(Utf8JsonWriter json);
}
