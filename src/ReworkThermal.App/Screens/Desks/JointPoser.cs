using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Tools;
using UnitsNet;
using ToolSetting = ReworkThermal.Core.Jobs.ToolSetting;

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
        if (Tip(setup, out TipSource? tip) is { } noTip)
        {
            return new JointSetup.Missing(noTip);
        }

        if (Jet(setup, room, out JetSource? jet) is { } noJet)
        {
            return new JointSetup.Missing(noJet);
        }

        return tip is null && jet is null
            ? new JointSetup.Missing(ScreenBudgetWords.NoTool)
            : OnBoard(setup, workshop.Account(setup.Job, setup.Start.Pads[0], known), room, tip, jet);
    }

    /// <summary>The tip of a touch; nothing when no iron is used.</summary>
    /// <returns>Null when it is in order, else what is missing.</returns>
    private string? Tip(TouchSetup setup, out TipSource? tip)
    {
        tip = null;
        if (setup.Start.Tools.OfType<ToolSetting.Iron>().FirstOrDefault() is not { } iron)
        {
            return null;
        }

        if (iron.Profile is null || !workshop.Workshop.Profiles.Irons.TryGetValue(iron.Profile, out Iron? profile))
        {
            return ScreenBudgetWords.UnknownIron(iron.Profile);
        }

        TipContact contact = FormReading.Contact(workshop.Workshop, setup.Bench);
        SettingOutcome<TipSource> outcome = new IronSetting(profile, iron.Set, contact).ToSource();
        tip = (outcome as SettingOutcome<TipSource>.Ready)?.Source;
        return (outcome as SettingOutcome<TipSource>.Refused)?.Reason;
    }

    /// <summary>The jet of a touch, at the distance of the plan request; nothing when no hot air is used.</summary>
    /// <returns>Null when it is in order, else what is missing.</returns>
    private string? Jet(TouchSetup setup, Surroundings room, out JetSource? jet)
    {
        jet = null;
        if (setup.Start.Tools.OfType<ToolSetting.HotAir>().FirstOrDefault() is not { } air)
        {
            return null;
        }

        if (air.Profile is null || !workshop.Workshop.Profiles.Nozzles.TryGetValue(air.Profile, out AirNozzle? nozzle))
        {
            return ScreenBudgetWords.UnknownNozzle(air.Profile);
        }

        Length distance = Length.FromMillimeters(FormReading.Number(setup.Bench, PlanField.AirMillimetres));
        SettingOutcome<JetSource> outcome = new AirSetting(nozzle, air.Set, air.Flow, distance, room.Room).ToSource();
        jet = (outcome as SettingOutcome<JetSource>.Ready)?.Source;
        return (outcome as SettingOutcome<JetSource>.Refused)?.Reason;
    }

    private JointSetup OnBoard(TouchSetup setup, PadAccount pad, Surroundings room, TipSource? tip, JetSource? jet)
    {
        if (Below(setup, pad.Site, room, out BottomHeat? below) is { } noHeater)
        {
            return new JointSetup.Missing(noHeater);
        }

        SolderCharge solder = new PadReplay(workshop.Bench).SolderDuring(
            pad,
            FinishedTouch.Of(setup.Start, setup.Added, setup.Began.Wall, Duration.Zero, known: null, sawFlow: false));
        return workshop.Bench.MeltingOf(solder.Fractions) is not MeltingOutcome.Found { Behaviour: { } melting }
            ? new JointSetup.Missing(ScreenBudgetWords.NoMelting)
            : new JointSetup.Posed(
                new JointProblem
                {
                    Site = pad.Site,
                    Solder = new SolderHeat(workshop.Workshop.Alloys.Properties).CurveOf(melting, workshop.Bench.FillOf(pad.Site, solder)),
                    FlowTemperature = melting.Flow,
                    Superheat = workshop.Workshop.Planning.Limits.Superheat.Value,
                    Surroundings = room,
                    Start = room.Room,
                    Preheat = below,
                    Touches = [],
                    End = Duration.FromSeconds(60),
                },
                tip,
                jet,
                FormReading.Side(setup.Bench),
                pad);
    }

    private string? Below(TouchSetup setup, JointSite site, Surroundings room, out BottomHeat? below)
    {
        below = null;
        if (setup.Start.Tools.OfType<ToolSetting.Preheater>().FirstOrDefault() is not { } heater)
        {
            return null;
        }

        if (heater.Profile is null || !workshop.Workshop.Profiles.Preheaters.TryGetValue(heater.Profile, out Preheater? preheater))
        {
            return ScreenBudgetWords.UnknownHeater(heater.Profile);
        }

        SettingOutcome<BottomHeat> outcome = new PreheatSetting(preheater, site.Board, room).ToBoardTemperature(heater.Set);
        below = (outcome as SettingOutcome<BottomHeat>.Ready)?.Source;
        return (outcome as SettingOutcome<BottomHeat>.Refused)?.Reason;
    }
}
