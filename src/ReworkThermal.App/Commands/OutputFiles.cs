using System.CommandLine;
using System.Text;
using ReworkThermal.App.Rendering.Charts;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Commands;

/// <summary>Files that a command writes on request, beside its answer.</summary>
internal static class OutputFiles
{
    /// <summary>The option <c>--csv FILE</c>.</summary>
    internal static Option<string?> CsvOption() => new("--csv") { Description = HelpText.Csv, HelpName = "file" };

    /// <summary>The option <c>--plot FILE</c>.</summary>
    internal static Option<string?> PlotOption() => new("--plot") { Description = HelpText.Plot, HelpName = "file" };

    /// <summary>Writes comma-separated values, if they were asked for.</summary>
    /// <param name="path">Where; null when not asked for.</param>
    /// <param name="content">Makes the text.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal static string? WriteCsv(string? path, Func<string> content) =>
        path is null ? null : Write(path, Encoding.UTF8.GetBytes(content()));

    /// <summary>Writes a picture, if it was asked for; the ending of the name says which kind.</summary>
    /// <param name="path">Where; null when not asked for.</param>
    /// <param name="chart">Makes the chart.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal static string? WritePlot(string? path, Func<Chart> chart) => (path, path is null ? string.Empty : Path.GetExtension(path).ToUpperInvariant()) switch
    {
        (null, _) => null,
        (_, ".SVG") => Write(path, Encoding.UTF8.GetBytes(SvgCanvas.Draw(chart()))),
        (_, ".PNG") => Write(path, RasterCanvas.Draw(chart())),
        _ => Refusals.UnknownPicture(path),
    };

    // The file appears whole or not at all.
    private static string? Write(string path, byte[] content)
    {
        string draft = path + ".part";
        try
        {
            File.WriteAllBytes(draft, content);
            File.Move(draft, path, overwrite: true);
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Refusals.CannotWrite(path, problem.Message);
        }
    }
}
