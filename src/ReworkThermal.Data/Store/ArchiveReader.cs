using System.Globalization;
using System.Text.Json;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>Reads and proves the text of an archive before anything of it goes into a store.</summary>
/// <param name="solders">Reads the name or designation of a solder.</param>
internal sealed class ArchiveReader(Func<string, DesignationReading> solders)
{
    private const int FirstYear = 2000;
    private const int LastYear = 2200;

    internal IReadOnlyList<JobLog> Read(byte[] bytes)
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
                string.Create(CultureInfo.InvariantCulture, $"it is no valid JSON, or nested deeper than 64 levels; the first fault is in line {problem.LineNumber + 1}, byte {problem.BytePositionInLine + 1}"), problem);
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

    // What the program would never have recorded itself.
    private string? Fault(JobEntry entry)
    {
        JobBrief? brief = (entry.What as JobEvent.JobOpened)?.Brief ?? (entry.What as JobEvent.BriefRevised)?.Brief;
        DateTimeOffset at = entry.What is JobEvent.ExposureLogged logged && IsOdd(logged.Exposure.StartedAt) ? logged.Exposure.StartedAt : entry.At;
        return IsOdd(at) ? string.Create(CultureInfo.InvariantCulture, $"its year must lie between {FirstYear} and {LastYear}; got {at.Year}")
            : brief?.BaseSolder is { } solder && solders(solder) is DesignationReading.Refused refused ? $"its base solder is no composition: {refused.Reason}"
            : null;
    }

    private static bool IsOdd(DateTimeOffset time) => time.UtcDateTime.Year is < FirstYear or > LastYear;

    private JobLog Log(RecordReader fields)
    {
        string name = fields.Text("job");
        JobId id = JobId.Fault(name) is { } fault ? throw new RecordFormatException(fault) : new JobId(name);
        EventReader reader = new(null);
        List<JobEntry> entries = fields.Objects("entries", entry => new JobEntry(
            entry.Whole("number"),
            entry.Time("at"),
            reader.Read(entry.Text("event"), entry)));
        foreach (JobEntry entry in entries)
        {
            if (Fault(entry) is { } wrong)
            {
                throw new RecordFormatException(string.Create(CultureInfo.InvariantCulture, $"job {id}, entry {entry.Number}: {wrong}"));
            }
        }

        return JobRules.JudgeAll(entries) is EventVerdict.Refused refused
            ? throw new RecordFormatException($"job {id}: {refused.Reason}")
            : new JobLog(id, entries);
    }
}
