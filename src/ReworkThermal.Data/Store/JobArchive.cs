using System.Globalization;
using System.Text;
using System.Text.Json;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>
/// Jobs as a JSON text of this program's own form, for keeping and for moving between benches. Canonical: the same jobs give the
/// same bytes (ASCII, one entry per line, fixed order of fields, plain numbers with the unit in the field's name), and what is read
/// back and written again gives the same bytes.
/// </summary>
public static class JobArchive
{
    /// <summary>Name of the form, first field of the file.</summary>
    public const string Format = "rework-thermal-jobs";

    /// <summary>Version of the form written here, and the only one read.</summary>
    public const int Version = 1;

    /// <summary>Writes jobs to a file.</summary>
    /// <param name="store">Where the jobs are.</param>
    /// <param name="jobs">Which jobs, or null for all.</param>
    /// <param name="path">The file.</param>
    /// <param name="force">Whether a file that is there may be replaced.</param>
    /// <param name="outputs">Writes the file, and knows which may not be written.</param>
    /// <exception cref="JobStoreException">The store cannot be read, or the target exists or cannot be written.</exception>
    public static void ExportTo(IJobStore store, IReadOnlyList<JobId>? jobs, string path, bool force, OutputFiles outputs) =>
        StoreFaults.WriteOut(path, outputs, force, draft =>
        {
            using FileStream file = new(draft, FileMode.CreateNew, FileAccess.Write);
            Export(store, jobs, file);
        });

    /// <summary>Writes jobs to a stream.</summary>
    /// <param name="store">Where the jobs are.</param>
    /// <param name="jobs">Which jobs, or null for all.</param>
    /// <param name="target">The stream.</param>
    /// <exception cref="JobStoreException">The store cannot be read.</exception>
    public static void Export(IJobStore store, IReadOnlyList<JobId>? jobs, Stream target)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(target);
        using BufferedStream buffered = new(target, 1 << 16);
        buffered.Write(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{{\"format\":\"{Format}\",\"version\":{Version},\"jobs\":[")));
        bool firstJob = true;
        foreach (JobId job in jobs ?? [.. store.List().Select(h => h.Id)])
        {
            buffered.Write(firstJob ? "\n{\"job\":\""u8 : ",\n{\"job\":\""u8);
            firstJob = false;
            buffered.Write(Encoding.ASCII.GetBytes(job.Value));
            buffered.Write("\",\"entries\":["u8);
            bool firstEntry = true;
            foreach (JobEntry entry in store.Read(job))
            {
                buffered.Write(firstEntry ? "\n"u8 : ",\n"u8);
                firstEntry = false;
                WriteEntry(entry, buffered);
            }

            buffered.Write("\n]}"u8);
        }

        buffered.Write("\n]}\n"u8);
        buffered.Flush();
    }

    /// <summary>Reads jobs from a file into a store, all or none.</summary>
    /// <param name="store">Where the jobs go. Jobs that are there already must begin alike; what they lack is added.</param>
    /// <param name="path">The file.</param>
    /// <param name="solders">Reads the name or designation of a base solder; null to know designations only.</param>
    /// <returns>What was added.</returns>
    /// <exception cref="JobStoreException">The file is not in order or does not fit the store (nothing was changed), or the store cannot be written.</exception>
    public static ImportSummary ImportFrom(IJobStore store, string path, Func<string, DesignationReading>? solders = null)
    {
        ArgumentNullException.ThrowIfNull(store);
        byte[] bytes;
        try
        {
            bytes = InputFile.ReadBytes(path, InputFile.MostArchive);
        }
        catch (DataFileException problem)
        {
            throw new JobStoreException(StoreTrouble.BadImport, $"The file {path} cannot be imported, nothing was changed: {problem.Problems[0].Rule}", problem);
        }

        try
        {
            return Import(store, new ArchiveReader(solders ?? AlloyDesignation.Read).Read(bytes));
        }
        catch (RecordFormatException problem)
        {
            throw new JobStoreException(StoreTrouble.BadImport, $"The file {path} cannot be imported, nothing was changed: {problem.Message}", problem);
        }
    }

    private static ImportSummary Import(IJobStore store, IReadOnlyList<JobLog> logs)
    {
        while (true)
        {
            List<JobLog> tails = [];
            int newJobs = 0;
            int known = 0;
            foreach (JobLog log in logs)
            {
                IReadOnlyList<JobEntry> there = store.Read(log.Id);
                int common = Math.Min(there.Count, log.Entries.Count);
                for (int i = 0; i < common; i++)
                {
                    if (!Bytes(there[i]).AsSpan().SequenceEqual(Bytes(log.Entries[i])))
                    {
                        throw new RecordFormatException(string.Create(
                            CultureInfo.InvariantCulture,
                            $"job {log.Id} is in the store already and differs from entry {i + 1} on; two records of one job cannot be merged"));
                    }
                }

                known += common;
                newJobs += there.Count == 0 ? 1 : 0;
                tails.Add(new JobLog(log.Id, [.. log.Entries.Skip(there.Count)]));
            }

            if (store.AppendAll(tails) is BatchOutcome.Written written)
            {
                return new ImportSummary(newJobs, written.Count, known);
            }
        }
    }

    private static byte[] Bytes(JobEntry entry)
    {
        using MemoryStream stream = new();
        WriteEntry(entry, stream);
        return stream.ToArray();
    }

    private static void WriteEntry(JobEntry entry, Stream target)
    {
        using Utf8JsonWriter json = new(target);
        json.WriteStartObject();
        json.WriteNumber("number", entry.Number);
        json.WriteString("at", RecordTime.Write(entry.At));
        json.WriteString("event", EventKinds.Of(entry.What));
        new EventWriter(json, null).Write(entry.What);
        json.WriteEndObject();
    }
}
