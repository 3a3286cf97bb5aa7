using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Data;
using ReworkThermal.Data.Profiles;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.App.Commands;

/// <summary>What the pads of jobs are judged with, read from the data folders.</summary>
internal sealed class JobWorkshop
{
    private readonly DataRoot _root;
    private readonly CancellationToken _cancellation;
    private readonly Dictionary<string, JointSite> _ownSites = new(StringComparer.Ordinal);

    /// <summary>Reads the data folders.</summary>
    /// <param name="shell">Where they are.</param>
    internal JobWorkshop(Shell shell)
        : this(shell.Data, Workshop.Load(shell.Data), new MeltingShelf(shell.Data), shell.Cancellation)
    {
    }

    /// <summary>Works with data folders that are read already; one object serves one thread.</summary>
    /// <param name="root">Where they are.</param>
    /// <param name="workshop">Profiles and limits.</param>
    /// <param name="melting">Phase engine and alloys.</param>
    /// <param name="cancellation">Stops simulations.</param>
    internal JobWorkshop(DataRoot root, Workshop workshop, MeltingShelf melting, CancellationToken cancellation = default)
    {
        _root = root;
        _cancellation = cancellation;
        Workshop = workshop;
        Melting = melting;
        Room = Workshop.Profiles.Rooms.TryGetValue(UsualBench.Room, out Surroundings? room)
            ? room
            : throw new DataFileException([new DataFileProblem($"profiles/rooms/{UsualBench.Room}.toml", 0, string.Empty, Refusals.NoSuchFile)]);
        Bench = new JobBench(
            Melting.Engine,
            Melting.Alloys.Properties,
            Workshop.Limits,
            Workshop.Removals.FirstOrDefault(r => r.Name == UsualBench.Removal) ?? Workshop.Removals[0],
            new ToolShelf(Workshop.Profiles, Room),
            Melting.Alloys.Find);
    }

    /// <summary>Profiles and limits.</summary>
    internal Workshop Workshop { get; }

    /// <summary>Phase engine and alloys.</summary>
    internal MeltingShelf Melting { get; }

    /// <summary>The room.</summary>
    internal Surroundings Room { get; }

    /// <summary>Models and tools.</summary>
    internal JobBench Bench { get; }

    /// <summary>Which data files are the user's own, one sentence each.</summary>
    internal IReadOnlyList<string> OwnData => [.. OwnDataWords.ForRecord(_root.UsedOwnFiles)];

    /// <summary>The joints of a job and the solder that arrived in them.</summary>
    /// <param name="brief">What the job is about.</param>
    /// <returns>Where the pads are, or why that is not known.</returns>
    internal JobSite SiteOf(JobBrief brief)
    {
        if (brief.Joint is null)
        {
            return new JobSite.Unknown(JobWords.NoJoint);
        }

        if (JointFor(brief.Joint, brief.Board, out JointSite? site, out string boardNote) is { } fault)
        {
            return new JobSite.Unknown(fault);
        }

        string solder = brief.BaseSolder ?? UsualBench.Solder;
        List<string> notes = [JobWords.OneProfileForAllPins(brief.Joint), JobWords.RemovedEachTime(Bench.Removal.Name, Numerals.Percent(Bench.Removal.Efficiency.Central.DecimalFractions))];
        if (boardNote.Length > 0)
        {
            notes.Add(boardNote);
        }

        if (brief.BaseSolder is null)
        {
            notes.Add(JobWords.AssumedSolder(solder));
        }

        return Melting.Alloys.Find(solder) switch
        {
            DesignationReading.Accepted accepted => new JobSite.Known(site!, accepted.Fractions, [.. notes, .. accepted.Notes]),
            DesignationReading.Refused refused => new JobSite.Unknown(refused.Reason),
            _ => throw new InvalidOperationException("unknown kind of reading"),
        };
    }

    /// <summary>Judges pads.</summary>
    /// <param name="state">The job.</param>
    /// <param name="where">Its joints.</param>
    /// <returns>One account per pad, in the order of the job.</returns>
    internal IReadOnlyList<PadAccount> Accounts(JobState state, JobSite.Known where) =>
        [.. state.Pads.Values.Select(p => Account(state, p.Pad, where))];

    /// <summary>Judges one pad.</summary>
    /// <param name="state">The job.</param>
    /// <param name="pad">The pad.</param>
    /// <param name="where">The joints of the job.</param>
    /// <returns>Its account.</returns>
    internal PadAccount Account(JobState state, PadId pad, JobSite.Known where) =>
        new PadReplay(Bench).Of(state.Pads[pad], SiteOf(state, pad, where), where.BaseSolder, _cancellation);

    /// <summary>The joint that a pad is judged as.</summary>
    /// <param name="state">The job.</param>
    /// <param name="pad">The pad.</param>
    /// <param name="where">The joints of the job.</param>
    /// <returns>The joint on its board.</returns>
    internal JointSite SiteOf(JobState state, PadId pad, JobSite.Known where)
    {
        if (state.Pads[pad].Joint is not { } own)
        {
            return where.Site;
        }

        if (!_ownSites.TryGetValue(own, out JointSite? site))
        {
            if (!Workshop.Profiles.Joints.TryGetValue(own, out JointProfile? profile) || JointOnBoard.Put(profile, where.Site.Board, out site) is not null)
            {
                // A profile that has gone, or fits no more, must not stop the rest of the job from being judged; NotesOf says so.
                site = where.Site;
            }

            _ownSites[own] = site!;
        }

        return site!;
    }

    /// <summary>What was assumed about the joints of a job.</summary>
    /// <param name="state">The job.</param>
    /// <param name="where">Its joints.</param>
    /// <returns>One sentence each.</returns>
    internal IReadOnlyList<string> NotesOf(JobState state, JobSite.Known where) =>
    [
        .. where.Notes,
        .. state.Pads.Values
            .Where(p => p.Joint is not null && ReferenceEquals(SiteOf(state, p.Pad, where), where.Site))
            .Select(p => JobWords.OwnJointGone(p.Pad, p.Joint!)),
    ];

    /// <summary>Citations of the limits and profiles that budgets rest on, and of the melting of a solder.</summary>
    /// <param name="solders">Solders that were in the joints.</param>
    /// <returns>Full citations, each once.</returns>
    internal IReadOnlyList<string> SourcesFor(IEnumerable<MassFractions> solders) =>
    [
        .. Citations.Of(
            _root.Files("profiles/limits"),
            _root.SourcesOf("profiles"))
            .Concat(solders.Distinct().SelectMany(Melting.SourcesFor))
            .Distinct(StringComparer.Ordinal),
    ];

    private string? JointFor(string jointId, string? boardId, out JointSite? site, out string note)
    {
        site = null;
        note = string.Empty;
        ProfileLibrary profiles = Workshop.Profiles;
        if (!profiles.Joints.TryGetValue(jointId, out JointProfile? joint))
        {
            return JobWords.UnknownProfile("joint", jointId, profiles.Joints.Keys);
        }

        if (boardId is null)
        {
            IReadOnlyList<string> fitting = JointOnBoard.BoardsFor(joint, profiles);
            if (fitting.Count != 1)
            {
                return JobWords.NoBoard(jointId, fitting);
            }

            boardId = fitting[0];
            note = JobWords.OnlyBoard(boardId);
        }

        return profiles.Boards.TryGetValue(boardId, out Board? board)
            ? JointOnBoard.Put(joint, board, out site) is { } misfit ? Refusals.DoesNotFit(jointId, boardId, misfit) : null
            : JobWords.UnknownProfile("board", boardId, profiles.Boards.Keys);
    }
}
