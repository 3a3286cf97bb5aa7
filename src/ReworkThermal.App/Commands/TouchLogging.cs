using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Commands;

/// <summary>
/// Takes a touch into the record: one of seconds and settings is simulated with the joint on its board, a measured series is used as it
/// is.
/// </summary>
/// <param name="shell">Signals when the user breaks off.</param>
/// <param name="workshop">What pads are judged with.</param>
internal sealed class TouchLogging(Shell shell, JobWorkshop workshop)
{
    /// <summary>Simulates a touch if its temperature was not measured, records it, and says what it cost.</summary>
    /// <param name="access">The open store.</param>
    /// <param name="picked">The job.</param>
    /// <param name="logged">The touch as it was typed.</param>
    /// <returns>The reply of the command.</returns>
    internal Reply Log(JobAccess access, JobPick.Picked picked, JobEvent.ExposureLogged logged)
    {
        Exposure touch = logged.Exposure;
        if (UnreadableAlloy(touch) is { } unreadable)
        {
            return new Reply.Misused(unreadable);
        }

        // What cannot be recorded need not be simulated.
        if (JobRules.Judge(picked.State, logged) is EventVerdict.Refused refused)
        {
            return new Reply.Misused(JobWords.NotRecorded(refused.Reason));
        }

        List<string> notes = [.. picked.Notes];
        JobSite where = workshop.SiteOf(picked.State.Brief);
        if (where is JobSite.Known known)
        {
            if (touch.Pads[0].Series is null)
            {
                if (Simulated(known, picked.State, touch, notes) is not { } simulated)
                {
                    return new Reply.Misused(TouchWords.NotSimulated(notes[^1]));
                }

                touch = simulated;
            }
        }
        else
        {
            notes.Add(TouchWords.LoggedOnly(((JobSite.Unknown)where).Reason));
        }

        return access.Desk.Record(picked.State.Id, logged with { Exposure = touch }) switch
        {
            RecordOutcome.Recorded recorded => new Reply.Answered(new TouchLoggedView(
                recorded.Entry,
                recorded.State,
                where is JobSite.Known judged ? Costs(judged, picked.State, recorded.State, touch) : [],
                notes)),
            RecordOutcome.Refused late => new Reply.Misused(JobWords.NotRecorded(late.Reason)),
            RecordOutcome.NoSuchJob => new Reply.Misused(JobWords.NoSuchJob(picked.State.Id.Value)),
            _ => throw new InvalidOperationException("unknown kind of record outcome"),
        };
    }

    private Exposure? Simulated(JobSite.Known known, JobState state, Exposure touch, List<string> notes)
    {
        PadReplay replay = new(workshop.Bench);
        List<HeatedPad> pads = [];
        ToolUse used = ToolUse.Of(touch);
        HashSet<BoardSide?> sides = [];
        foreach (HeatedPad share in touch.Pads)
        {
            PadAccount account = workshop.Account(state, share.Pad, known);
            SolderCharge solder = replay.SolderDuring(account, touch);
            switch (workshop.Bench.Simulate(account.Site, ToolUse.Of(touch), solder, touch.Dwell, shell.Cancellation))
            {
                case TouchSimulation.Completed done:
                    used = done.Tools.Use;
                    sides.Add(used.Side);
                    pads.Add(share with { Melted = share.Melted ?? done.Melted, Series = InterfaceSeries.Simulated(done.Pad) });
                    notes.Add(TouchWords.Simulated(share.Pad, solder.Fractions.ToString(), Numerals.Celsius(done.Flow, 0), done.TimeToFlow is { } time ? Numerals.Seconds(time) : null));
                    notes.AddRange(done.Warnings.Concat(done.Notes).Where(n => !notes.Contains(n, StringComparer.Ordinal)));
                    break;
                case TouchSimulation.Failed failed:
                    notes.Add(failed.Reason);
                    return null;
                default:
                    throw new InvalidOperationException("unknown kind of simulation");
            }
        }

        return touch with { Pads = pads, Tools = used.Tools, Side = sides.Count == 1 ? used.Side : touch.Side };
    }

    private List<PadCost> Costs(JobSite.Known known, JobState before, JobState after, Exposure touch) =>
        [.. touch.Pads.Select(p => new PadCost(workshop.Account(before, p.Pad, known).Budget, workshop.Account(after, p.Pad, known)))];

    private string? UnreadableAlloy(Exposure touch)
    {
        foreach ((string option, string? text) in ((string, string?)[])[("--added", touch.Added?.Designation), ("--mix", touch.Mix)])
        {
            if (text is not null && workshop.Melting.Alloys.Find(text) is DesignationReading.Refused refused)
            {
                return $"{option}: {refused.Reason}";
            }
        }

        return touch is { Purpose: TouchPurpose.Mix, Added.Mass: null } && touch.Added is not null && touch.Mix is null ? TouchWords.MassNeeded : null;
    }
}
