using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Data.Calibrations;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.App.Commands;

/// <summary>A plan request as every command that plans asks it, so that all of them number the same plans alike.</summary>
internal abstract record PosedPlan
{
    private PosedPlan()
    {
    }

    /// <summary>It can be searched.</summary>
    /// <param name="Workshop">The data files.</param>
    /// <param name="Request">The request, with what is learned of its board.</param>
    internal sealed record Ready(Workshop Workshop, PlanRequest Request) : PosedPlan;

    /// <summary>It cannot.</summary>
    /// <param name="Reply">What to say.</param>
    internal sealed record Refused(Reply Reply) : PosedPlan;

    /// <summary>Reads a request.</summary>
    /// <param name="shell">Data folders.</param>
    /// <param name="path">The file.</param>
    /// <param name="calibrations">What is learned of boards.</param>
    /// <returns>The request, or why it cannot be searched.</returns>
    internal static PosedPlan Read(Shell shell, string path, CalibrationFolder calibrations)
    {
        Workshop workshop = Workshop.Load(shell.Data);
        PlanRequest request = PlanRequestFile.Read(path, workshop);
        return request.Site.Joint is ThroughJoint
            ? new Ready(workshop, request with { Calibration = calibrations.Find(request.BoardName)?.Learned })
            : new Refused(new Reply.Unusable(Refusals.InFile(path, Refusals.PlanNeedsThrough(request.JointName))));
    }

    /// <summary>Gives a request the pad of a job.</summary>
    /// <param name="ready">The request.</param>
    /// <param name="job">The job as it was named.</param>
    /// <param name="pad">The pad as typed.</param>
    /// <param name="pads">Reads the pads of the job for a request.</param>
    /// <returns>The request with the pad, or the complaint.</returns>
    internal static PosedPlan WithPad(Ready ready, string job, string pad, Func<PlanRequest, JobPads> pads)
    {
        if (PadId.Fault(pad) is { } bad)
        {
            return Misused(JobWords.BadPadName(pad, bad));
        }

        JobPads read = pads(ready.Request);
        if (read is not JobPads.Judged judged)
        {
            return Misused(((JobPads.Refused)read).Reason);
        }

        PadId id = new(pad);
        if (judged.Accounts.FirstOrDefault(a => a.Ledger.Pad == id) is not { } account)
        {
            return Misused(BudgetWords.NoSuchPad(id, judged.State.Pads.Keys));
        }

        return account.Ledger.Joint is { } own && own != ready.Request.JointName
            ? Misused(PlanWords.OtherJoint(job, own, ready.Request.JointName))
            : ready with { Request = ready.Request with { Pad = account, Assumed = [.. ready.Request.Assumed, .. judged.Notes, .. account.Notes] } };
    }

    private static Refused Misused(string complaint) => new(new Reply.Misused(complaint));
}
