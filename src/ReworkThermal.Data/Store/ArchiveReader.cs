using System.Globalization;
using System.Text.Json;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>Reads and proves the text of an archive before anything of it goes into a store.</summary>
internal static class ArchiveReader
{
    internal static IReadOnlyList<JobLog> Read(byte[] bytes)
    {
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(bytes);
        }
        catch (JsonException problem)
        {
            // The parser's own message may repeat a whole line of the file.
            throw new RecordFormatException(
                string.Create(CultureInfo.InvariantCulture, $"it is no valid JSON; the first fault is in line {problem.LineNumber + 1}, byte {problem.BytePositionInLine + 1}"), problem);
        }

        using (document)
        {
            RecordReader file = new(document.RootElement, string.Empty);
            if (file.TextOrNull("format") != JobArchive.Format)
            {
                throw new RecordFormatException($"its format must be \"{JobArchive.Format}\"");
            }

            int version = file.Whole("version");
            if (version != JobArchive.Version)
            {
                throw new RecordFormatException(string.Create(
                    CultureInfo.InvariantCulture,
                    $"its version is {version}, this program reads version {JobArchive.Version}"));
            }

            List<JobLog> logs = file.Objects("jobs", Log);
            file.Finish();
            return logs.Select(l => l.Id).Distinct().Count() == logs.Count
                ? logs
                : throw new RecordFormatException("it holds a job twice");
        }
    }

    private static JobLog Log(RecordReader fields)
    {
        string name = fields.Text("job");
        JobId id = JobId.Fault(name) is { } fault ? throw new RecordFormatException(fault) : new JobId(name);
        EventReader reader = new(null);
        List<JobEntry> entries = fields.Objects("entries", entry => new JobEntry(
            entry.Whole("number"),
            entry.Time("at"),
            reader.Read(entry.Text("event"), entry)));
        return JobRules.JudgeAll(entries) is EventVerdict.Refused refused
            ? throw new RecordFormatException($"job {id}: {refused.Reason}")
            : new JobLog(id, entries);
    }
}
