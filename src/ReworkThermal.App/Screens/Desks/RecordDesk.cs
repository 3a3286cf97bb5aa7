using System.Text;
using ReworkThermal.App.Commands;
using ReworkThermal.App.Rendering.Record;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Data;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Writes the record that the command <c>report</c> writes, as a page and as Markdown.</summary>
/// <param name="data">The data folders.</param>
/// <param name="workshop">What they say; used on the thread of the record only.</param>
/// <param name="folder">Where to write.</param>
/// <param name="outputs">Gives the way to write files.</param>
internal sealed class RecordDesk(DataRoot data, JobWorkshop workshop, string folder, Func<OutputFiles> outputs) : IRecordDesk
{
    public RecordAnswer Write(JobState job, bool replace)
    {
        string page = Path.Combine(folder, ScreenRecordWords.RecordName(job.Id, "html"));
        string markdown = Path.Combine(folder, ScreenRecordWords.RecordName(job.Id, "md"));
        List<string> there = [.. new[] { page, markdown }.Where(File.Exists)];
        if (there.Count > 0 && !replace)
        {
            return new RecordAnswer.Exists(there);
        }

        RecordReport record = RecordMaking.Of(data, workshop, job);
        return outputs().WriteAll(Outputs.Contents([(page, Encoding.UTF8.GetBytes(RecordHtml.Of(record))), (markdown, Encoding.UTF8.GetBytes(RecordMarkdown.Of(record)))]), replace) is { } complaint
            ? new RecordAnswer.Failed(complaint)
            : new RecordAnswer.Written([page, markdown]);
    }
}
