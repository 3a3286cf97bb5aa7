using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace ReworkThermal.App.Rendering;

/// <summary>Reports as JSON text: indented, field names in snake case with their units, no NaN.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions _options = new()
    {
        Indented = true,
        NewLine = "\n",

        // The output goes to a terminal or a file, not into a web page: letters and signs stay readable. Control characters are
        // replaced beforehand by the Text method, since this encoder lets some of them through.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes a report.</summary>
    /// <param name="report">The report.</param>
    /// <returns>One JSON object.</returns>
    internal static string Of(IRenderedReport report)
    {
        ArrayBufferWriter<byte> buffer = new(4096);
        using (Utf8JsonWriter json = new(buffer, _options))
        {
            json.WriteStartObject();
            report.WriteJson(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>Writes a number rounded for people, or null when there is none.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="name">Field name with its unit.</param>
    /// <param name="value">The number; must be finite if present.</param>
    /// <param name="digits">Digits after the point.</param>
    internal static void Number(this Utf8JsonWriter json, string name, double? value, int digits)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, Rounded(number, digits));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>Writes a list of numbers on the same terms as <see cref="Number"/>.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="name">Field name with its unit.</param>
    /// <param name="values">The numbers, all finite.</param>
    /// <param name="digits">Digits after the point.</param>
    internal static void Numbers(this Utf8JsonWriter json, string name, IEnumerable<double> values, int digits)
    {
        json.WriteStartArray(name);
        foreach (double value in values)
        {
            json.WriteNumberValue(Rounded(value, digits));
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a list of sentences.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="name">Field name.</param>
    /// <param name="sentences">The sentences.</param>
    internal static void Sentences(this Utf8JsonWriter json, string name, IEnumerable<string> sentences)
    {
        json.WriteStartArray(name);
        foreach (string sentence in sentences)
        {
            json.WriteStringValue(SafeText.OneLine(sentence));
        }

        json.WriteEndArray();
    }

    /// <summary>Writes a piece of text.</summary>
    /// <param name="json">Where to write.</param>
    /// <param name="name">Field name.</param>
    /// <param name="text">The text.</param>
    internal static void Text(this Utf8JsonWriter json, string name, string? text)
    {
        if (text is null)
        {
            json.WriteNull(name);
        }
        else
        {
            json.WriteString(name, SafeText.OneLine(text));
        }
    }

    // Adding zero turns a negative zero into a plain one.
    private static double Rounded(double value, int digits) => Math.Round(value, digits) + 0.0;
}
