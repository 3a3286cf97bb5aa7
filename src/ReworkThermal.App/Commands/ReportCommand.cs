using System.CommandLine;
using System.Text;
using ReworkThermal.App.Rendering.Record;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>report</c>: the record of a job, to hand over.</summary>
internal static class ReportCommand
{
    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, JobOptions options)
    {
        Option<string?> html = FilePaths.Option("--html", HelpText.ReportHtml);
        Option<string?> markdown = FilePaths.Option("--markdown", HelpText.ReportMarkdown);
        Option<bool> force = CommonOptions.Force();
        Command command = new("report", HelpText.Report) { options.Job, html, markdown, force };
        command.SetAction(parse => options.OnJob(parse, shell, (_, picked) =>
        {
            RecordReport record = RecordMaking.Of(shell, picked.State);
            List<(string Path, byte[] Content)> files = [];
            if (parse.GetValue(html) is { } page)
            {
                files.Add((page, Encoding.UTF8.GetBytes(RecordHtml.Of(record))));
            }

            if (parse.GetValue(markdown) is { } text)
            {
                files.Add((text, Encoding.UTF8.GetBytes(RecordMarkdown.Of(record))));
            }

            if (Outputs.Of(shell.Data, parse.GetValue(options.Store)).WriteAll(Outputs.Contents(files), parse.GetValue(force)) is { } complaint)
            {
                return new Reply.Misused(complaint);
            }

            return new Reply.Answered(new RecordView(record, [.. files.Select(f => f.Path)], picked.Notes));
        }));
        return command;
    }
}
