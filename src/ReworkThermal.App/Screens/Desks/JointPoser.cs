using ReworkThermal.App.Commands;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Turns a touch of a job into a problem of the heat solver.</summary>
/// <param name="workshop">The data folders and what pads are judged with.</param>
internal sealed class JointPoser(JobWorkshop workshop)
{
    /// <summary>Poses a touch.</summary>
    internal JointSetup Pose(TouchSetup setup)
    {
        JobSite site = workshop.SiteOf(setup.Job.Brief);
        if (site is not JobSite.Known known)
        {
            return new JointSetup.Missing(setup.Job.Brief.Joint is null ? ScreenBudgetWords.NoJoint : ((JobSite.Unknown)site).Reason);
        }

        if (!setup.Job.Pads.ContainsKey(setup.Start.Pads[0]))
        {
            return new JointSetup.Missing(ScreenClockWords.NoPad);
        }

        Surroundings room = FormReading.Room(workshop.Workshop, setup.Bench);
        PadAccount pad = workshop.Account(setup.Job, setup.Start.Pads[0], known);
        ToolUse use = new(setup.Start.Tools, FinishedTouch.BoardHeld(setup.Start.Tools), setup.Start.Side);
        return new ToolShelf(workshop.Workshop.Profiles, room).Resolve(use, pad.Site) switch
        {
            ToolsOutcome.Ready { Tools: { Tip: null, Jet: null } } => new JointSetup.Missing(ScreenBudgetWords.NoTool),
            ToolsOutcome.Ready ready => OnBoard(setup, pad, ready.Tools),
            ToolsOutcome.Refused refused => new JointSetup.Missing(refused.Reason),
            _ => throw new InvalidOperationException("unknown kind of tools outcome"),
        };
    }

    private JointSetup OnBoard(TouchSetup setup, PadAccount pad, TouchTools tools)
    {
        SolderCharge solder = new PadReplay(workshop.Bench).SolderDuring(
            pad,
            FinishedTouch.Of(setup.Start, setup.Began.Wall, Duration.Zero, known: null, sawFlow: false));
        return workshop.Bench.MeltingOf(solder.Fractions) is not MeltingOutcome.Found { Behaviour: { } melting }
            ? new JointSetup.Missing(ScreenBudgetWords.NoMelting)
            : new JointSetup.Posed(
                new JointProblem
                {
                    Site = pad.Site,
                    Solder = new SolderHeat(workshop.Workshop.Alloys.Properties).CurveOf(melting, workshop.Bench.FillOf(pad.Site, solder)),
                    FlowTemperature = melting.Flow,
                    Superheat = workshop.Workshop.Planning.Limits.Superheat.Value,
                    Surroundings = tools.Room,
                    Start = tools.Room.Room,
                    Preheat = tools.Preheat,
                    Touches = [],
                    End = Duration.FromSeconds(60),
                },
                tools,
                pad);
    }
}
