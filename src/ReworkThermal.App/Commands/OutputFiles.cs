using System.CommandLine;
using System.Text;
using ReworkThermal.App.Rendering.Charts;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Commands;

/// <summary>Figures that a command writes on request, beside its answer; a file that is there is replaced, since it can be had again.</summary>
internal static class OutputFiles
{
    /// <summary>The option <c>--csv FILE</c>.</summary>
    internal static Option<string?> CsvOption() => FilePaths.Option("--csv", HelpText.Csv);

    /// <summary>The option <c>--plot FILE</c>.</summary>
    internal static Option<string?> PlotOption() => FilePaths.Option("--plot", HelpText.Plot);

    /// <summary>Writes comma-separated values, if they were asked for.</summary>
    /// <param name="path">Where; null when not asked for.</param>
    /// <param name="content">Makes the text.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal static string? WriteCsv(string? path, Func<string> content) =>
        path is null ? null : UserFiles.Write(path, Encoding.UTF8.GetBytes(content()), force: true);

    /// <summary>Writes a picture, if it was asked for; the ending of the name says which kind.</summary>
    /// <param name="path">Where; null when not asked for.</param>
    /// <param name="chart">Makes the chart.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal static string? WritePlot(string? path, Func<Chart> chart) => (path, path is null ? string.Empty : Path.GetExtension(path).ToUpperInvariant()) switch
    {
        (null, _) => null,
        (_, ".SVG") => UserFiles.Write(path, Encoding.UTF8.GetBytes(SvgCanvas.Draw(chart())), force: true),
        (_, ".PNG") => UserFiles.Write(path, RasterCanvas.Draw(chart()), force: true),
        _ => Refusals.UnknownPicture(path),
    };
}
