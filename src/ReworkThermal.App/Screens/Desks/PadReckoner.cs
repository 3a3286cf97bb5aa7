using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Profiles;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>What heat a pad of a job has had, from the job's record and the data folders.</summary>
/// <param name="workshop">The data folders.</param>
internal sealed class PadReckoner(Workshop workshop)
{
    /// <summary>Reckons one pad.</summary>
    internal PadHistory Of(JobState job, PadLedger pad)
    {
        if (Site(job.Brief) is not SiteChoice.Chosen { Site: { } site })
        {
            return new PadHistory.Unknown((Site(job.Brief) as SiteChoice.Missing)?.Reason ?? ScreenBudgetWords.NoSite);
        }

        if (pad.Prior is not { } stated || workshop.Limits.PriorOrNull(Name(stated)) is not { } prior)
        {
            return new PadHistory.Unknown(ScreenBudgetWords.NoPrior);
        }

        if (workshop.Limits.LaminateOrNull(site.Board.Laminate.ClassName) is not { } laminate)
        {
            return new PadHistory.Unknown(ScreenBudgetWords.NoLaminate);
        }

        DamageModel model = new(laminate, workshop.Limits.Parameters, Geometry(site));
        PadDamage state = model.Begin(prior);
        int without = 0;
        foreach (PadHeat heat in pad.Heats)
        {
            if (heat.Share.Series is not { } series)
            {
                without++;
                continue;
            }

            state = model.After(state, new PadExposure(series.History, heat.Share.Melted ?? true, Charge: null, HeatedRegion.Local, ExposureStart.AfterCooling));
        }

        return new PadHistory.Known(model, state, without);
    }

    /// <summary>The joint of a job on its board.</summary>
    internal SiteChoice Site(JobBrief brief)
    {
        if (brief.Board is not { } boardName || !workshop.Profiles.Boards.TryGetValue(boardName, out Board? board))
        {
            return new SiteChoice.Missing(ScreenBudgetWords.NoBoard);
        }

        if (brief.Joint is not { } jointName || !workshop.Profiles.Joints.TryGetValue(jointName, out JointProfile? joint))
        {
            return new SiteChoice.Missing(ScreenBudgetWords.NoJoint);
        }

        try
        {
            return new SiteChoice.Chosen(joint.On(board));
        }
        catch (ImpossibleGeometryException misfit)
        {
            return new SiteChoice.Missing(ScreenBudgetWords.Misfit(misfit.Message));
        }
    }

    private static string Name(PriorCondition condition) => condition switch
    {
        PriorCondition.Sound => "sound",
        PriorCondition.Touched => "touched",
        PriorCondition.Scorched => "scorched",
        _ => throw new ArgumentOutOfRangeException(nameof(condition)),
    };

    private static PadGeometry Geometry(JointSite site) => site.Joint switch
    {
        ThroughJoint through => new PadGeometry.Through(
            UnitMath.Min(through.TopPadDiameter, through.BottomPadDiameter),
            through.BarrelInnerDiameter,
            through.BarrelWall,
            site.Board.StackUp.Thickness),
        SurfaceJoint surface => new PadGeometry.Surface(
            UnitMath.Min(surface.PadLength, surface.PadWidth),
            site.Board.StackUp.Copper[0].Thickness),
        _ => throw new InvalidOperationException("unknown kind of joint"),
    };
}
