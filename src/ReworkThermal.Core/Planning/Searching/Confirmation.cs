using System.Collections.Concurrent;
using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Searching;

/// <summary>
/// Turns candidates into plans by real runs: the mix with its own melt curve, cooling after the touch, the exact number of passes, and
/// all gauges of the pad.
/// </summary>
internal sealed class Confirmation(Workload work, PhaseEngine engine, TouchSimulator simulator, SolderHeat heat, PassCounts counts, double laminatePerTouch)
{
    // After so many candidates of one kind that hold the limits, the likely order has been followed far enough: the next ones differ by
    // less than the steps of the grid do. Those that do not hold the limits cost less, and the first ones of a kind often do not.
    private const int MostTries = 10;
    private const int MostMisses = 30;

    private static readonly Duration _cooling = Duration.FromSeconds(8);

    // Half a step of the grid of settings of one tool: finer than a dial and a tip agree.
    private static readonly TemperatureDelta _fineStep = TemperatureDelta.FromKelvins(10);

    // Kinds are searched side by side; whichever comes first computes a thing, and the thing is the same.
    private readonly ConcurrentDictionary<(MixOption Mix, ToolSetting Setting, ToolSetting Refit), Lazy<Plan?>> _tried = [];
    private readonly ConcurrentDictionary<MixOption, Lazy<FinalJoint?>> _finals = [];
    private readonly ConcurrentDictionary<ToolSetting, Lazy<ConfirmedTouch?>> _refits = [];
    private readonly ConcurrentDictionary<MixOption, StuckBraid> _stuck = [];
    private readonly Lock _pastLock = new();

    /// <summary>The least heat budget of those that were past what is allowed, with its melts; null when none was.</summary>
    internal (int Melts, HeatBudget After)? LeastPast { get; private set; }

    /// <summary>What came nearest to melting any mix through the braid and did not; null when braid held nothing back.</summary>
    internal StuckBraid? Stuck => _stuck.Values.MinBy(s => s.MissingK);

    /// <summary>The same for one mix.</summary>
    internal StuckBraid? StuckWith(MixOption mix) => _stuck.GetValueOrDefault(mix);

    /// <summary>The best plan among candidates of a kind; null when none holds the limits.</summary>
    internal Plan? Best(PlanKind kind, IReadOnlyList<Candidate> candidates, CancellationToken cancellation)
    {
        (Candidate Candidate, Plan Plan)? best = null;
        int tries = 0;
        int misses = 0;
        foreach (Candidate candidate in candidates)
        {
            cancellation.ThrowIfCancellationRequested();
            if (best is { } so && candidate.Least.RankFor(kind, work.Damage, work.PadBefore).CompareTo(RankOf(so.Plan, kind)) >= 0)
            {
                continue;
            }

            if (tries == MostTries || misses == MostMisses)
            {
                break;
            }

            if (Confirm(candidate, cancellation) is not { } plan)
            {
                misses++;
                continue;
            }

            tries++;
            if (best is null || RankOf(plan, kind).CompareTo(RankOf(best.Value.Plan, kind)) < 0)
            {
                best = (candidate, plan);
            }
        }

        return best is { } found ? Finer(kind, found.Candidate, found.Plan, cancellation) with { Kind = kind } : null;
    }

    /// <summary>Tries the settings between those of the grid, by halves of its step to either side of the best so far.</summary>
    private Plan Finer(PlanKind kind, Candidate candidate, Plan plan, CancellationToken cancellation)
    {
        Plan best = plan;
        foreach (TemperatureDelta step in candidate.Station.Setting.Assist is null ? [_fineStep] : new[] { _fineStep * 2, _fineStep })
        {
            Temperature middle = best.First.Setting.Set;
            foreach (Temperature set in new[] { middle - step, middle + step })
            {
                ToolSetting near = candidate.Station.Setting with { Set = set };
                if (IsAllowed(near)
                    && Confirm(candidate with { Station = candidate.Station with { Setting = near } }, cancellation) is { } other
                    && RankOf(other, kind).CompareTo(RankOf(best, kind)) < 0)
                {
                    best = other;
                }
            }
        }

        return best;
    }

    private bool IsAllowed(ToolSetting setting) =>
        simulator.CanSet(setting) && (setting.Iron is null || setting.Set <= work.Limits.MostIronSetting.Value);

    private (double First, double Second, double Third) RankOf(Plan plan, PlanKind kind) =>
        new JobCost(plan.LaminateShare.Central, plan.Passes + 1, plan.Added.Kilograms, plan.First.TightnessWith(work.Limits.WorkingTime.Value), plan.First.Setting.Assist is not null).RankFor(kind, work.Damage, work.PadBefore);

    /// <summary>Runs a candidate; null when it does not hold the limits.</summary>
    internal Plan? Confirm(Candidate candidate, CancellationToken cancellation)
    {
        ToolSetting refit = candidate.Station.Refit!.Setting;
        return _tried.GetOrAdd((candidate.Mix, candidate.Station.Setting, refit), _ => new Lazy<Plan?>(() => Make(candidate, cancellation))).Value;
    }

    private Plan? Make(Candidate candidate, CancellationToken cancellation)
    {
        MixOption mix = candidate.Mix;
        EnthalpyCurve curve = heat.CurveOf(mix.Melting, mix.Mix.Amount / work.Solder.Amount);
        if (FinalOf(mix) is not { } final
            || Touch(curve, mix.FlowC, candidate.Station.Setting, cancellation) is not { } first
            || RefitTouch(candidate.Station.Refit!.Setting, cancellation) is not { } refit
            || !Wicks(curve, mix, candidate.Station.Setting, cancellation))
        {
            return null;
        }

        LaminateSums spent = first.Spent;
        for (int i = 0; i < final.Passes; i++)
        {
            spent += refit.Spent;
        }

        Spread laminate = work.Damage.Kinetics.Share(spent);
        if (laminate.Central > work.LaminateAllowed)
        {
            return null;
        }

        PadDamage before = work.PadBefore;
        List<PadExposure> exposures = [.. Exposures(mix, first, refit, final.Passes)];
        HeatBudget after = work.Damage.Budget(work.Damage.After(before, exposures));
        if (!work.Allows(after))
        {
            NotePast(final.Passes + 1, after);
            return null;
        }

        return new Plan
        {
            Kind = PlanKind.SmallestBudget,
            Alloy = mix.Alloy,
            Share = mix.Share,
            Added = mix.Added,
            WireLength = WireLength(mix),
            Melting = mix.Melting,
            First = first.Plan,
            Refit = refit.Plan,
            Passes = final.Passes,
            Final = final,
            Before = work.Damage.Budget(before),
            After = after,
            LaminateShare = laminate,
            Exposures = exposures,
            BindingLimit = BindingLimit(first.Plan, refit.Plan),
            Neighbours = NeighbourStrain.Of(work.Request.Site, first.Neighbours, refit.Neighbours),
            Warnings = PlanWarnings.Of(work, mix),
        };
    }

    // Where solder is taken out with braid, the tip must melt the joint through it.
    private bool Wicks(EnthalpyCurve curve, MixOption mix, ToolSetting setting, CancellationToken cancellation)
    {
        if (work.Request.Bench.Removal.Strip is not { } strip || setting.Iron is null)
        {
            return true;
        }

        Duration longest = work.LongestWith(setting);
        if (simulator.Run(curve, mix.FlowC, setting, longest, longest, RunPurpose.Screening, cancellation, BraidHeat.LayerOf(strip)) is not { } through)
        {
            return false;
        }

        double reached = through.Run.Flow?.ColdestPeakCelsius ?? double.NegativeInfinity;
        if (through.SecondsUntilColdest(mix.FlowC) is not null)
        {
            return true;
        }

        StuckBraid here = new(setting, reached, mix.FlowC - reached);
        _ = _stuck.AddOrUpdate(mix, here, (_, so) => so.MissingK <= here.MissingK ? so : here);
        return false;
    }

    private void NotePast(int melts, HeatBudget after)
    {
        lock (_pastLock)
        {
            LeastPast = LeastPast is { } so && so.After.Share.Central <= after.Share.Central ? so : (melts, after);
        }
    }

    private FinalJoint? FinalOf(MixOption mix) => _finals.GetOrAdd(mix, _ => new Lazy<FinalJoint?>(() =>
        new CleaningSearch(engine).FewestPasses(JobHeat.Question(work, mix), counts.Of(mix) ?? work.Limits.MostPasses.Value))).Value;

    private MeltingBehaviour RefillMelting() => engine.MeltingOf(work.Request.Refill.Fractions) is MeltingOutcome.Found found
        ? found.Behaviour
        : throw new InvalidOperationException("the refill alloy was computed before");

    private ConfirmedTouch? RefitTouch(ToolSetting setting, CancellationToken cancellation) => _refits.GetOrAdd(setting, _ => new Lazy<ConfirmedTouch?>(() =>
    {
        MeltingBehaviour refill = RefillMelting();
        return Touch(heat.CurveOf(refill), refill.Flow.DegreesCelsius, setting, cancellation);
    })).Value;

    private ConfirmedTouch? Touch(EnthalpyCurve curve, double flowC, ToolSetting setting, CancellationToken cancellation)
    {
        Duration longest = work.LongestWith(setting);
        if (simulator.Run(curve, flowC, setting, longest, longest, RunPurpose.Plan, cancellation) is not { } full
            || TouchJudge.Judge(full, setting, work.NeededC(flowC), work.Limits, longest, laminatePerTouch) is not { } touch
            || simulator.Run(curve, flowC, setting, touch.Dwell, touch.Dwell + _cooling, RunPurpose.Plan, cancellation) is not { } cooled
            || cooled.FirstPartAtItsLimit() is not null)
        {
            return null;
        }

        LaminateSums spent = work.Damage.Kinetics.Spent(cooled.Pad);
        return new ConfirmedTouch(touch with { LaminateShare = work.Damage.Kinetics.Share(spent).Central }, spent, cooled.Pad, cooled.Run.Neighbours);
    }

    private IEnumerable<PadExposure> Exposures(MixOption mix, ConfirmedTouch first, ConfirmedTouch refit, int passes)
    {
        yield return Exposure(first, mix.Mix.Fractions, mix.Melting.Flow, mix.Mix.Fractions[Element.Cu]);
        for (int i = 0; i < passes; i++)
        {
            yield return Exposure(refit, work.Request.Refill.Fractions, RefillMelting().Flow, work.Request.Refill.Fractions[Element.Cu]);
        }
    }

    private PadExposure Exposure(ConfirmedTouch touch, MassFractions solder, Temperature flow, double freshCopper) => new(
        touch.Pad,
        true,
        CopperBath.Of(engine, work.Properties, work.Joint, solder, flow, freshCopper),
        HeatedRegion.Local,
        ExposureStart.AfterCooling);

    private Length? WireLength(MixOption mix)
    {
        if (mix.Alloy is null || !mix.Alloy.Forms.Contains("wire", StringComparer.Ordinal))
        {
            return null;
        }

        Bench bench = work.Request.Bench;
        SolderWire wire = new(bench.WireDiameter, work.Properties.SolidDensity(mix.Alloy.Fractions), bench.WireFlux, bench.FluxDensity);
        return wire.LengthFor(mix.Added);
    }

    private string BindingLimit(TouchPlan first, TouchPlan refit)
    {
        TouchPlan tighter = (first.Stop - first.Dwell) <= (refit.Stop - refit.Dwell) ? first : refit;
        string which = ReferenceEquals(tighter, first) ? "first pass" : "refit";
        double left = (tighter.Stop - tighter.Dwell).Seconds;
        return tighter.StopReason switch
        {
            StopReason.LongestTouch => string.Create(CultureInfo.InvariantCulture, $"longest touch, {which}: {left:0.0} s left of {work.LongestWith(tighter.Setting).Seconds:0.0} s"),
            StopReason.PadTemperature => string.Create(CultureInfo.InvariantCulture, $"pad temperature, {which}: {work.Limits.MostPadTemperature.Value.DegreesCelsius:0} °C is reached {left:0.0} s after the dwell"),
            StopReason.HeatBudget => string.Create(CultureInfo.InvariantCulture, $"heat budget, {which}: its part is spent {left:0.0} s after the dwell"),
            StopReason.Neighbour => string.Create(CultureInfo.InvariantCulture, $"{tighter.StopPart!.Name} near the joint, {which}: a touch {left:0.0} s longer would bring it to its limit of {tighter.StopPart.MostTemperature!.Central.DegreesCelsius:0} °C"),
            _ => throw new InvalidOperationException("unknown stop reason"),
        };
    }

    /// <summary>A setting at which braid between tip and joint would stick.</summary>
    /// <param name="Setting">The setting.</param>
    /// <param name="ReachedC">Hottest that the coldest solder got through it [°C].</param>
    /// <param name="MissingK">What was missing to the flow temperature [K].</param>
    internal sealed record StuckBraid(ToolSetting Setting, double ReachedC, double MissingK);

    private sealed record ConfirmedTouch(TouchPlan Plan, LaminateSums Spent, TemperatureHistory Pad, IReadOnlyList<NeighbourReport> Neighbours);
}
