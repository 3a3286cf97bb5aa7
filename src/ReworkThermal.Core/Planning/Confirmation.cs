using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>
/// Turns candidates into plans by real runs: the mix with its own melt curve, cooling after the touch, the exact number of passes, and
/// all gauges of the pad.
/// </summary>
internal sealed class Confirmation(Workload work, PhaseEngine engine, TouchSimulator simulator, SolderHeat heat, double laminatePerTouch)
{
    // After this many confirmed candidates of one kind the order by bound has been followed far enough; the next bounds lie close together.
    private const int MostTries = 8;

    private static readonly Duration _cooling = Duration.FromSeconds(8);

    private readonly double _lossPerMelt = work.Damage.Parameters.Adhesion.LossPerMelt.Central;
    private readonly Dictionary<(MixOption Mix, ToolSetting Setting), Plan?> _tried = [];
    private readonly Dictionary<MixOption, FinalJoint?> _finals = [];

    /// <summary>The best plan among candidates of a kind; null when none holds the limits.</summary>
    internal Plan? Best(PlanKind kind, IReadOnlyList<Candidate> candidates, CancellationToken cancellation)
    {
        Plan? best = null;
        int tries = 0;
        foreach (Candidate candidate in candidates)
        {
            cancellation.ThrowIfCancellationRequested();
            bool cannotWin = best is not null && candidate.Cost.RankFor(kind, _lossPerMelt).CompareTo(RankOf(best, kind)) >= 0;
            if (cannotWin || tries == MostTries)
            {
                break;
            }

            tries++;
            if (Confirm(candidate, cancellation) is { } plan && (best is null || RankOf(plan, kind).CompareTo(RankOf(best, kind)) < 0))
            {
                best = plan with { Kind = kind };
            }
        }

        return best;
    }

    private (double First, double Second, double Third) RankOf(Plan plan, PlanKind kind) =>
        new JobCost(plan.LaminateShare.Central, plan.Passes + 1, plan.Added.Kilograms).RankFor(kind, _lossPerMelt);

    private Plan? Confirm(Candidate candidate, CancellationToken cancellation)
    {
        (MixOption Mix, ToolSetting Setting) key = (candidate.Mix, candidate.Station.Setting);
        if (!_tried.TryGetValue(key, out Plan? plan))
        {
            plan = Make(candidate, cancellation);
            _tried[key] = plan;
        }

        return plan;
    }

    private Plan? Make(Candidate candidate, CancellationToken cancellation)
    {
        MixOption mix = candidate.Mix;
        EnthalpyCurve curve = heat.CurveOf(mix.Melting, mix.Mix.Amount / work.Solder.Amount);
        if (FinalOf(mix) is not { } final
            || Touch(curve, mix.FlowC, candidate.Station.Setting, cancellation) is not { } first
            || Touch(heat.CurveOf(RefillMelting()), RefillMelting().Flow.DegreesCelsius, candidate.Station.Refit!.Setting, cancellation) is not { } refit)
        {
            return null;
        }

        LaminateSums spent = first.Spent;
        for (int i = 0; i < final.Passes; i++)
        {
            spent += refit.Spent;
        }

        Spread laminate = work.Damage.Kinetics.Share(spent);
        if (laminate.Central > work.Limits.MostBudgetShare.Value.DecimalFractions)
        {
            return null;
        }

        PadDamage before = work.Damage.Begin(work.Request.Prior);
        PadDamage after = work.Damage.After(before, Exposures(mix, first, refit, final.Passes));
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
            After = work.Damage.Budget(after),
            LaminateShare = laminate,
            BindingLimit = BindingLimit(first.Plan, refit.Plan),
            Warnings = Warnings(mix),
        };
    }

    private FinalJoint? FinalOf(MixOption mix)
    {
        if (!_finals.TryGetValue(mix, out FinalJoint? final))
        {
            final = new CleaningSearch(engine).FewestPasses(JobHeat.Question(work, mix), JobHeat.EstimatePasses(work, mix));
            _finals[mix] = final;
        }

        return final;
    }

    private MeltingBehaviour RefillMelting() => engine.MeltingOf(work.Request.Refill.Fractions) is MeltingOutcome.Found found
        ? found.Behaviour
        : throw new InvalidOperationException("the refill alloy was computed before");

    private ConfirmedTouch? Touch(EnthalpyCurve curve, double flowC, ToolSetting setting, CancellationToken cancellation)
    {
        Duration longest = work.Limits.MostDwell.Value;
        if (simulator.Run(curve, flowC, setting, longest, longest, cancellation) is not { } full
            || TouchJudge.Judge(full, setting, work.NeededC(flowC), work.Limits, laminatePerTouch) is not { } touch
            || simulator.Run(curve, flowC, setting, touch.Dwell, touch.Dwell + _cooling, cancellation) is not { } cooled)
        {
            return null;
        }

        LaminateSums spent = work.Damage.Kinetics.Spent(cooled.Pad);
        return new ConfirmedTouch(touch with { LaminateShare = work.Damage.Kinetics.Share(spent).Central }, spent, cooled.Pad);
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
            StopReason.LongestTouch => string.Create(CultureInfo.InvariantCulture, $"longest touch, {which}: {left:0.0} s left of {work.Limits.MostDwell.Value.Seconds:0.0} s"),
            StopReason.PadTemperature => string.Create(CultureInfo.InvariantCulture, $"pad temperature, {which}: {work.Limits.MostPadTemperature.Value.DegreesCelsius:0} °C is reached {left:0.0} s after the dwell"),
            StopReason.HeatBudget => string.Create(CultureInfo.InvariantCulture, $"heat budget, {which}: its part is spent {left:0.0} s after the dwell"),
            _ => throw new InvalidOperationException("unknown stop reason"),
        };
    }

    private List<string> Warnings(MixOption mix)
    {
        List<string> warnings = [];
        MassFractions refill = work.Request.Refill.Fractions;
        if (mix.Alloy is not null)
        {
            warnings.AddRange(MixHazards.Of(work.Solder.Fractions.MixedWith(refill, 0.5), mix.Alloy.Fractions));
            RemovalMethod removal = work.Request.Bench.Removal;
            warnings.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The passes are counted with {removal.Efficiency.Central.Percent:0} % taken out each time ({removal.Efficiency.Low.Percent:0} to {removal.Efficiency.High.Percent:0} % is usual): a poor pass needs another."));
        }

        if (refill[Element.Pb] > Alloy.MostLeadOfLeadFree && work.Solder.Fractions[Element.Pb] <= Alloy.MostLeadOfLeadFree)
        {
            warnings.Add("The refit brings lead to a lead-free joint: check what the law allows for this product, and mark the board.");
        }

        return warnings;
    }

    private sealed record ConfirmedTouch(TouchPlan Plan, LaminateSums Spent, TemperatureHistory Pad);
}
