using System.Globalization;
using Microsoft.Data.Sqlite;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>Backup and examination of a store.</summary>
public sealed partial class SqliteJobStore
{
    /// <summary>Writes a copy of the whole store, consistent even while others write.</summary>
    /// <param name="path">Where the copy shall be.</param>
    /// <param name="force">Whether a file that is there may be replaced.</param>
    /// <param name="outputs">Writes the file, and knows which may not be written.</param>
    /// <exception cref="JobStoreException">The target exists, or the copy cannot be written.</exception>
    public void BackupTo(string path, bool force, OutputFiles outputs)
    {
        string full = StoreFile.Real(path);
        if (StoreFile.HasLog(full) && full != Path)
        {
            throw StoreFaults.LogBeside(full);
        }

        StoreFaults.WriteOut(path, outputs, force, beside =>
        {
            using SqliteCommand command = new("vacuum into $path", _connection);
            _ = command.Parameters.AddWithValue("$path", beside);
            try
            {
                _ = command.ExecuteNonQuery();
            }
            catch (SqliteException problem)
            {
                throw new JobStoreException(
                    StoreFaults.From(problem, Path).Trouble,
                    $"The backup {path} cannot be written: {problem.Message} The job store itself was not changed.",
                    problem);
            }
        });
    }

    /// <summary>Makes a new store with the jobs of another one; for going on elsewhere when that one can no longer be written.</summary>
    /// <param name="source">Where the jobs are; a store whose file is gone still knows them while it is open.</param>
    /// <param name="path">The new file; no file may be there.</param>
    /// <returns>The new store.</returns>
    /// <exception cref="JobStoreException">The target exists or cannot be written, or the source cannot be read.</exception>
    public static SqliteJobStore NewFrom(IJobStore source, string path)
    {
        ArgumentNullException.ThrowIfNull(source);
        string full = StoreFile.Real(path);
        StoreFaults.WriteOut(full, new OutputFiles([]), force: false, beside =>
        {
            using (SqliteJobStore copy = Open(beside))
            {
                _ = copy.AppendAll([.. source.List().Select(header => new JobLog(header.Id, source.Read(header.Id)))]);
            }

            // The log of a store that was deleted stays behind; what it holds is in the copy now.
            if (source is SqliteJobStore { IsGone: true } gone && gone.Path == full)
            {
                StoreFile.DeleteLog(full);
            }
            else if (StoreFile.HasLog(full))
            {
                throw StoreFaults.LogBeside(full);
            }
        });
        return Open(full);
    }

    /// <summary>Reads everything and replays every job.</summary>
    /// <returns>How much is there, and what is wrong with it.</returns>
    /// <exception cref="JobStoreException">The store cannot be read at all.</exception>
    public StoreExamination Examine()
    {
        List<string> problems = [.. Guarded(IntegrityProblems), .. Guarded(() => StoreSchema.Differences(_connection))];
        List<string> names = Guarded(JobNames);
        int entries = names.Sum(name => Examine(name, problems));
        int withEntries = Guarded(JobsWithEntries);
        try
        {
            int listed = List().Count;
            if (listed != names.Count || withEntries != names.Count)
            {
                problems.Add(string.Create(CultureInfo.InvariantCulture, $"the number of jobs is not the same everywhere: {names.Count} by their names, {withEntries} by their entries, {listed} in the list"));
            }
        }
        catch (JobStoreException problem) when (problem.Trouble == StoreTrouble.Damaged)
        {
            problems.Add(problem.Message);
        }

        return new StoreExamination(names.Count, entries, StoreSchema.VersionOf(_connection, null), [.. problems.Distinct()]);
    }

    private int Examine(string name, List<string> problems)
    {
        try
        {
            return Examine(IdOf(name), problems);
        }
        catch (JobStoreException problem) when (problem.Trouble == StoreTrouble.Damaged)
        {
            problems.Add(problem.Message);
            return 0;
        }
    }

    private List<string> JobNames()
    {
        List<string> names = [];
        using SqliteCommand command = new("select name from jobs order by id", _connection);
        using SqliteDataReader rows = command.ExecuteReader();
        while (rows.Read())
        {
            names.Add(rows.GetString(0));
        }

        return names;
    }

    private int JobsWithEntries()
    {
        using SqliteCommand command = new("select count(distinct job) from entries", _connection);
        return (int)(long)command.ExecuteScalar()!;
    }

    private int Examine(JobId job, List<string> problems)
    {
        IReadOnlyList<JobEntry> log = Read(job);
        if (log.Count == 0 || log[0].Number != 1)
        {
            problems.Add(NoFirstEntry(job).Message);
        }
        else if (JobRules.JudgeAll(log) is EventVerdict.Refused refused)
        {
            problems.Add($"job {job}: {refused.Reason}");
        }

        return log.Count;
    }

    private List<string> IntegrityProblems()
    {
        List<string> problems = [];
        using (SqliteCommand command = new("pragma integrity_check(20)", _connection))
        using (SqliteDataReader rows = command.ExecuteReader())
        {
            while (rows.Read())
            {
                if (rows.GetString(0) is string answer && answer != "ok")
                {
                    problems.Add(answer.ReplaceLineEndings(" "));
                }
            }
        }

        using (SqliteCommand command = new("pragma foreign_key_check", _connection))
        using (SqliteDataReader rows = command.ExecuteReader())
        {
            if (rows.Read())
            {
                problems.Add("an entry belongs to a job that is not there");
            }
        }

        return problems;
    }
}
