using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Turns a touch of a job into a problem of the heat solver.</summary>
/// <param name="workshop">The data folders.</param>
/// <param name="engine">Phase equilibria.</param>
/// <param name="sites">Finds a joint on its board.</param>
internal sealed class JointPoser(Workshop workshop, PhaseEngine engine, PadReckoner sites)
{
    /// <summary>Poses a touch.</summary>
    internal JointSetup Pose(TouchSetup setup)
    {
        SiteChoice choice = sites.Site(setup.Job.Brief);
        if (choice is not SiteChoice.Chosen { Site: { } site })
        {
            return new JointSetup.Missing((choice as SiteChoice.Missing)?.Reason ?? ScreenBudgetWords.NoSite);
        }

        Surroundings room = RoomOf.The(workshop, setup.Bench);
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
            : WithBoard(setup, site, room, tip, jet);
    }

    /// <summary>The tip of a touch; nothing when no iron is used.</summary>
    /// <returns>Null when it is in order, else what is missing.</returns>
    private string? Tip(TouchSetup setup, out TipSource? tip)
    {
        tip = null;
        if (setup.Start.Tools.OfType<Core.Jobs.ToolSetting.Iron>().FirstOrDefault() is not { } iron)
        {
            return null;
        }

        if (iron.Profile is null || !workshop.Profiles.Irons.TryGetValue(iron.Profile, out Iron? profile))
        {
            return ScreenBudgetWords.UnknownIron(iron.Profile);
        }

        TipContact contact = workshop.Profiles.Contacts[Enum.Parse<ContactState>(setup.Bench[PlanField.Contact], ignoreCase: true)];
        SettingOutcome<TipSource> outcome = new IronSetting(profile, iron.Set, contact).ToSource();
        tip = (outcome as SettingOutcome<TipSource>.Ready)?.Source;
        return (outcome as SettingOutcome<TipSource>.Refused)?.Reason;
    }

    /// <summary>The jet of a touch, at the distance of the plan request; nothing when no hot air is used.</summary>
    /// <returns>Null when it is in order, else what is missing.</returns>
    private string? Jet(TouchSetup setup, Surroundings room, out JetSource? jet)
    {
        jet = null;
        if (setup.Start.Tools.OfType<Core.Jobs.ToolSetting.HotAir>().FirstOrDefault() is not { } air)
        {
            return null;
        }

        if (air.Profile is null || !workshop.Profiles.Nozzles.TryGetValue(air.Profile, out AirNozzle? nozzle))
        {
            return ScreenBudgetWords.UnknownNozzle(air.Profile);
        }

        Length distance = Length.FromMillimeters(double.Parse(setup.Bench[PlanField.AirMillimetres], System.Globalization.CultureInfo.InvariantCulture));
        SettingOutcome<JetSource> outcome = new AirSetting(nozzle, air.Set, air.Flow, distance, room.Room).ToSource();
        jet = (outcome as SettingOutcome<JetSource>.Ready)?.Source;
        return (outcome as SettingOutcome<JetSource>.Refused)?.Reason;
    }

    private JointSetup WithBoard(TouchSetup setup, JointSite site, Surroundings room, TipSource? tip, JetSource? jet)
    {
        BottomHeat? below = null;
        if (setup.Start.Tools.OfType<Core.Jobs.ToolSetting.Preheater>().FirstOrDefault() is { } heater)
        {
            if (heater.Profile is null || !workshop.Profiles.Preheaters.TryGetValue(heater.Profile, out Preheater? preheater))
            {
                return new JointSetup.Missing(ScreenBudgetWords.UnknownHeater(heater.Profile));
            }

            switch (new PreheatSetting(preheater, site.Board, room).ToBoardTemperature(heater.Set))
            {
                case SettingOutcome<BottomHeat>.Ready ready:
                    below = ready.Source;
                    break;
                case SettingOutcome<BottomHeat>.Refused refused:
                    return new JointSetup.Missing(refused.Reason);
                default:
                    throw new InvalidOperationException("unknown kind of setting");
            }
        }

        return Solder(setup, site) is not { } solder
            ? new JointSetup.Missing(ScreenBudgetWords.NoFlow)
            : new JointSetup.Posed(
                new JointProblem
                {
                    Site = site,
                    Solder = solder.Curve,
                    FlowTemperature = solder.Flow,
                    Superheat = workshop.Planning.Limits.Superheat.Value,
                    Surroundings = room,
                    Start = room.Room,
                    Preheat = below,
                    Touches = [],
                    End = Duration.FromSeconds(60),
                },
                tip,
                jet,
                setup.Bench[PlanField.Side] == "top" ? BoardSide.Top : BoardSide.Bottom);
    }

    /// <summary>What is in the joint: the refit alloy for a refit; the mix of the kept plan when alloy is added; else the base solder.</summary>
    private (EnthalpyCurve Curve, Temperature Flow)? Solder(TouchSetup setup, JointSite site)
    {
        string name = setup.Start.Purpose == TouchPurpose.Refill ? setup.Bench[PlanField.Refill] : setup.Job.Brief.BaseSolder ?? setup.Bench[PlanField.BaseSolder];
        if (workshop.Alloys.Find(name) is not DesignationReading.Accepted own)
        {
            return null;
        }

        double massFactor = 1;
        MassFractions fractions = own.Fractions;
        if (setup is { Job.Plan.What: { Alloy: { } alloy, AddedMass: { } added }, Start.Purpose: TouchPurpose.Mix or TouchPurpose.Wick or TouchPurpose.Lift }
            && site.Joint is ThroughJoint joint
            && workshop.Alloys.Find(alloy) is DesignationReading.Accepted dilution)
        {
            SolderCharge charge = JointSolder.ChargeIn(joint, site.Board.StackUp.Thickness, fractions, workshop.Alloys.Properties);
            SolderCharge mix = charge.With(new SolderCharge(added, dilution.Fractions));
            massFactor = mix.Amount / charge.Amount;
            fractions = mix.Fractions;
        }

        return engine.MeltingOf(fractions) is MeltingOutcome.Found found
            ? (new SolderHeat(workshop.Alloys.Properties).CurveOf(found.Behaviour, massFactor), found.Behaviour.Flow)
            : null;
    }
}
