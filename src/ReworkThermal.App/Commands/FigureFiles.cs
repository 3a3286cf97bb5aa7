using System.CommandLine;
using System.Text;
using ReworkThermal.App.Rendering.Charts;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Commands;

/// <summary>The figures that a command writes on request, beside its answer: comma-separated values and a picture, both or none.</summary>
/// <param name="options">Options that all commands share; they name the job store.</param>
internal sealed class FigureFiles(JobOptions options)
{
    private readonly Option<string?> _csv = FilePaths.Option("--csv", HelpText.Csv);
    private readonly Option<string?> _plot = FilePaths.Option("--plot", HelpText.Plot);
    private readonly Option<bool> _force = CommonOptions.Force();

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Add(_csv);
        command.Add(_plot);
        command.Add(_force);
    }

    /// <summary>Whether any figures are wanted.</summary>
    internal bool AreWanted(ParseResult parse) => parse.GetValue(_csv) is not null || parse.GetValue(_plot) is not null;

    /// <summary>Writes what was asked for.</summary>
    /// <param name="parse">The command line.</param>
    /// <param name="shell">The data folders.</param>
    /// <param name="inputs">Files that the command line names to be read.</param>
    /// <param name="csv">Makes the comma-separated values.</param>
    /// <param name="chart">Makes the chart.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal string? Write(ParseResult parse, Shell shell, IReadOnlyList<string> inputs, Func<string> csv, Func<Chart> chart)
    {
        List<(string Path, byte[] Content)> files = [];
        if (parse.GetValue(_csv) is { } table)
        {
            files.Add((table, Encoding.UTF8.GetBytes(csv())));
        }

        if (parse.GetValue(_plot) is { } picture)
        {
            switch (Path.GetExtension(picture).ToUpperInvariant())
            {
                case ".SVG":
                    files.Add((picture, Encoding.UTF8.GetBytes(SvgCanvas.Draw(chart()))));
                    break;
                case ".PNG":
                    files.Add((picture, RasterCanvas.Draw(chart())));
                    break;
                default:
                    return Refusals.UnknownPicture(picture);
            }
        }

        return files.Count == 0 ? null : Outputs.Of(shell.Data, parse.GetValue(options.Store), inputs).WriteAll(Outputs.Contents(files), parse.GetValue(_force));
    }
}
