using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;

namespace ReworkThermal.App.Commands;

/// <summary>The pads of a job, judged as the joint that a plan request is about.</summary>
internal abstract record JobPads
{
    private JobPads()
    {
    }

    /// <summary>The job was read.</summary>
    /// <param name="State">The job.</param>
    /// <param name="Accounts">Its pads with everything they have had.</param>
    /// <param name="Notes">What was assumed, one sentence each.</param>
    internal sealed record Judged(JobState State, IReadOnlyList<PadAccount> Accounts, IReadOnlyList<string> Notes) : JobPads;

    /// <summary>It was not, or it is about something else.</summary>
    /// <param name="Reason">What is wrong and what would be right.</param>
    internal sealed record Refused(string Reason) : JobPads;

    /// <summary>Reads a job from the store and replays its pads.</summary>
    /// <param name="shell">Clock, data folders.</param>
    /// <param name="store">Path of the store; null for the usual one.</param>
    /// <param name="job">Identity, its beginning, or label.</param>
    /// <param name="request">The request that the pads are wanted for.</param>
    /// <returns>The pads, or why there are none.</returns>
    internal static JobPads Read(Shell shell, string? store, string job, PlanRequest request)
    {
        JobPick pick;
        using (JobAccess access = JobAccess.Open(shell, store, mayCreate: false))
        {
            pick = access.Pick(job);
        }

        return pick switch
        {
            JobPick.Picked picked => Judge(shell, picked, job, request),
            JobPick.Refused refused => new Refused(refused.Reason),
            _ => throw new InvalidOperationException("unknown kind of pick"),
        };
    }

    /// <summary>Replays the pads of a job.</summary>
    /// <param name="shell">Clock, data folders.</param>
    /// <param name="picked">The job.</param>
    /// <param name="job">What it was named by.</param>
    /// <param name="request">The request that the pads are wanted for.</param>
    /// <returns>The pads, or why there are none.</returns>
    internal static JobPads Judge(Shell shell, JobPick.Picked picked, string job, PlanRequest request)
    {
        JobBrief brief = picked.State.Brief;
        if (brief.Joint is { } joint && joint != request.JointName)
        {
            return new Refused(PlanWords.OtherJoint(job, joint, request.JointName));
        }

        if (brief.Board is { } board && board != request.BoardName)
        {
            return new Refused(PlanWords.OtherBoard(job, board, request.BoardName));
        }

        JobWorkshop workshop = new(shell);
        return workshop.SiteOf(brief) switch
        {
            JobSite.Known known => new Judged(picked.State, workshop.Accounts(picked.State, known), [.. picked.Notes, .. workshop.NotesOf(picked.State, known)]),
            JobSite.Unknown unknown => new Refused(unknown.Reason),
            _ => throw new InvalidOperationException("unknown kind of site"),
        };
    }
}
