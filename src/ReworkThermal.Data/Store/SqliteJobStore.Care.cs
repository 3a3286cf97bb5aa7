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
    public void BackupTo(string path, bool force, OutputFiles outputs) =>
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

    /// <summary>Reads everything and replays every job.</summary>
    /// <returns>How much is there, and what is wrong with it.</returns>
    /// <exception cref="JobStoreException">The store cannot be read at all.</exception>
    public StoreExamination Examine()
    {
        List<string> problems = [.. Guarded(IntegrityProblems)];
        int jobs = 0;
        int entries = 0;
        try
        {
            foreach (JobHeader header in List())
            {
                jobs++;
                entries += Examine(header.Id, problems);
            }
        }
        catch (JobStoreException problem) when (problem.Trouble == StoreTrouble.Damaged)
        {
            problems.Add(problem.Message);
        }

        return new StoreExamination(jobs, entries, StoreSchema.VersionOf(_connection, null), problems);
    }

    private int Examine(JobId job, List<string> problems)
    {
        try
        {
            IReadOnlyList<JobEntry> log = Read(job);
            if (JobRules.JudgeAll(log) is EventVerdict.Refused refused)
            {
                problems.Add($"job {job}: {refused.Reason}");
            }

            return log.Count;
        }
        catch (JobStoreException problem) when (problem.Trouble == StoreTrouble.Damaged)
        {
            problems.Add(problem.Message);
            return 0;
        }
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
