using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Searching;

/// <summary>What a search works on: the request with everything that follows from it directly.</summary>
internal sealed class Workload
{
    private Workload(PlanRequest request, ThroughJoint joint, DamageModel damage, SolderProperties properties)
    {
        Request = request;
        Joint = joint;
        Properties = properties;
        Damage = damage;
        BoardThickness = request.Site.Board.StackUp.Thickness;
        PadBefore = request.Pad?.Damage ?? damage.Begin(request.Prior);
        double used = damage.Budget(PadBefore).GaugeOrNull(GaugeKind.Laminate)?.Share.Central ?? 0;
        LaminateAllowed = Math.Min(request.Limits.MostBudgetShare.Value.DecimalFractions, Math.Max(0, request.Limits.MostBudgetAfter.Value.DecimalFractions - used));
        Solder = JointSolder.ChargeIn(joint, BoardThickness, request.BaseSolder.Fractions, properties);
        RemovalMethod removal = request.Bench.Removal;
        Duration takes = Duration.FromSeconds(Solder.Amount / (removal.Rate.Central * Duration.FromSeconds(1)));
        Limits = takes > request.Limits.WorkingTime.Value
            ? request.Limits with { WorkingTime = new Limit<Duration>(takes, removal.Rate.Provenance, "solder in the joint over what the tool takes a second") }
            : request.Limits;
    }

    /// <summary>Sets up a request.</summary>
    /// <exception cref="ArgumentException">The joint is not a through-hole joint, or the board's class of laminate is unknown.</exception>
    internal static Workload Of(PlanRequest request, DamageLimits limits, SolderProperties properties)
    {
        if (request.Site.Joint is not ThroughJoint joint)
        {
            throw new ArgumentException("plans are made for through-hole joints", nameof(request));
        }

        LaminateLimits laminate = limits.LaminateOrNull(request.Site.Board.Laminate.ClassName)
            ?? throw new ArgumentException($"unknown class of laminate '{request.Site.Board.Laminate.ClassName}'", nameof(request));
        return new Workload(request, joint, new DamageModel(laminate, limits.Parameters, PadShape.Of(request.Site)), properties);
    }

    internal PlanRequest Request { get; }

    internal ThroughJoint Joint { get; }

    internal DamageModel Damage { get; }

    internal Length BoardThickness { get; }

    /// <summary>The pad as the job finds it: with its logged touches when they are known, otherwise with the assumed earlier heat alone.</summary>
    internal PadDamage PadBefore { get; }

    /// <summary>Share of the laminate's time to delamination that the job may use: the limit of the request, or what the pad has left [1].</summary>
    internal double LaminateAllowed { get; }

    /// <summary>Solder in the joint now.</summary>
    internal SolderCharge Solder { get; }

    /// <summary>Limits of the request; the working time grows with the solder that is to be taken out.</summary>
    internal PlanLimits Limits { get; }

    /// <summary>Density and conductivity rules.</summary>
    internal SolderProperties Properties { get; }

    /// <summary>Longest touch with the tool of a setting.</summary>
    internal Duration LongestWith(ToolSetting setting) => setting switch
    {
        { Air: not null } => Limits.MostAirTime.Value,
        { Assist: { } help } => UnitMath.Min(Limits.MostDwell.Value, UnitMath.Max(Duration.Zero, Limits.MostAirTime.Value - help.Lead)),
        _ => Limits.MostDwell.Value,
    };

    /// <summary>The pad's heat budget after a number of melts, whatever their temperatures: no job with as many melts leaves it lower.</summary>
    internal HeatBudget BudgetAfterMelts(int melts)
    {
        PadExposure coldMelt = PadExposure.Steady(Request.Bench.Room.Room, Duration.FromSeconds(1), melted: true);
        return Damage.Budget(Damage.After(PadBefore, [.. Enumerable.Repeat(coldMelt, melts)]));
    }

    /// <summary>Whether a budget is one to which the job may bring the pad.</summary>
    internal bool Allows(HeatBudget after) => after.Share.Central <= Limits.MostBudgetAfter.Value.DecimalFractions;

    /// <summary>Temperature that the coldest solder must reach for a flow temperature [°C].</summary>
    internal double NeededC(double flowC) => flowC + Limits.Superheat.Value.Kelvins;
}
