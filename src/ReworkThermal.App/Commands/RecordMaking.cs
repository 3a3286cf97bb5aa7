using System.Security.Cryptography;
using System.Text;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Data;

namespace ReworkThermal.App.Commands;

/// <summary>Gathers what the record of a job says. The same job and the same data files always give the same record.</summary>
internal static class RecordMaking
{
    private const int FingerprintDigits = 16;

    /// <summary>Gathers a record.</summary>
    /// <param name="shell">Where the data are.</param>
    /// <param name="state">The job.</param>
    /// <returns>The record.</returns>
    internal static RecordReport Of(Shell shell, JobState state) => Of(shell.Data, new JobWorkshop(shell), state);

    /// <summary>Gathers a record with data folders that are read already.</summary>
    /// <param name="data">Where they are.</param>
    /// <param name="workshop">What they say.</param>
    /// <param name="state">The job.</param>
    /// <returns>The record.</returns>
    internal static RecordReport Of(DataRoot data, JobWorkshop workshop, JobState state)
    {
        string version = typeof(RecordMaking).Assembly.GetName().Version?.ToString(3) ?? string.Empty;
        string fingerprint = Fingerprint(data);
        JobSite site = workshop.SiteOf(state.Brief);
        if (site is not JobSite.Known known)
        {
            return new RecordReport(
                state,
                [],
                ((JobSite.Unknown)site).Reason,
                RecordReporting.Alloys(state, state.Brief.BaseSolder, workshop.Melting.Alloys.Find),
                null,
                workshop.OwnData,
                [],
                version,
                fingerprint);
        }

        IReadOnlyList<PadAccount> pads = workshop.Accounts(state, known);
        PadAccount? most = RecordReporting.MostWorked(pads);
        IReadOnlyList<string> sources = workshop.SourcesFor(most is null ? [] : [most.Contents.Fractions]);
        return new RecordReport(
            state,
            pads,
            null,
            RecordReporting.Alloys(state, state.Brief.BaseSolder ?? UsualBench.Solder, workshop.Melting.Alloys.Find),
            most is null ? null : RecordReporting.Final(most, workshop.Bench, sources),
            [.. workshop.NotesOf(state, known), .. pads.SelectMany(p => p.Notes.Select(n => BudgetWords.OfPad(p.Ledger.Pad, n))), .. workshop.OwnData],
            sources,
            version,
            fingerprint);
    }

    // Names and contents of all data files, in ordinal order of their paths.
    private static string Fingerprint(DataRoot root)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach ((string name, string path) in root.AllFiles("alloys").Concat(root.AllFiles("profiles")))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(name));
            try
            {
                hash.AppendData(InputFile.ReadBytes(path, InputFile.MostData));
            }
            catch (DataFileException broken) when (root.LeavesOut(path, broken))
            {
                // Its name counts; what it says is not in force.
            }
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..FingerprintDigits];
    }
}
