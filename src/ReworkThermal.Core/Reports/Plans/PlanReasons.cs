using System.Globalization;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Uncertainty;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Plans;

/// <summary>Explains a plan step by step: every figure with its rule and with what it rests on.</summary>
public static class PlanReasons
{
    /// <summary>The steps of a plan.</summary>
    /// <param name="request">The request.</param>
    /// <param name="plan">A plan that answers it.</param>
    /// <returns>One line per figure, in the order of the reasoning.</returns>
    public static IReadOnlyList<WhyLine> Of(PlanRequest request, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        return [.. Mix(request, plan), .. Wire(request, plan), .. Touch("first pass", request, plan.First, "the mix"), .. Passes(request, plan), .. Touch("later passes and refit", request, plan.Refit, "the refill"), .. Budget(request, plan), .. Limits(request), .. Inputs(request, plan), .. Sampling(plan)];
    }

    private static IEnumerable<WhyLine> Mix(PlanRequest request, Plan plan)
    {
        const string Step = "mix";
        yield return new WhyLine(Step, $"in the joint: {request.BaseSolder.Name}", "stated in the request", "the request");
        yield return plan.Alloy is { } alloy
            ? new WhyLine(
                Step,
                Text($"add {plan.Added.Milligrams:0.0} mg of {alloy.Name}, {plan.Share.Percent:0} % of the mix"),
                "share = added / (solder in the joint + added); solder in the joint = (barrel less leg + two hollow fillets as bodies of revolution) x density",
                $"joint profile {request.JointName}; densities in alloys/elements.toml")
            : new WhyLine(Step, "add nothing", "the joint's own solder flows within the limits", "the limits below");
        yield return new WhyLine(
            Step,
            Text($"flows at {plan.Melting.Flow.DegreesCelsius:0} °C, plus or minus {plan.Melting.Uncertainty.Kelvins:0} K"),
            Text($"97 % of the mass liquid in phase equilibrium (least Gibbs energy); liquidus {plan.Melting.Liquidus.DegreesCelsius:0} °C, solidus {plan.Melting.Solidus.DegreesCelsius:0} °C"),
            "alloys/thermodynamics, each system with its assessment");
        Limit<TemperatureDelta> superheat = request.Limits.Superheat;
        yield return new WhyLine(
            Step,
            Text($"the coldest solder must reach {plan.Melting.Flow.DegreesCelsius + superheat.Value.Kelvins:0} °C"),
            Text($"flow temperature + superheat of {superheat.Value.Kelvins:0} K"),
            RestsOn("superheat", superheat.Provenance));
    }

    private static IEnumerable<WhyLine> Wire(PlanRequest request, Plan plan)
    {
        if (plan.WireLength is { } wire)
        {
            Bench bench = request.Bench;
            yield return new WhyLine(
                "mix",
                Text($"{wire.Millimeters:0.0} mm of {bench.WireDiameter.Millimeters:0.0#} mm wire"),
                Text($"mass / (section x density), less {bench.WireFlux.Percent:0.#} % of flux by mass"),
                "wire diameter: the request; profiles/wires; densities in alloys/elements.toml");
        }
    }

    private static IEnumerable<WhyLine> Touch(string step, PlanRequest request, TouchPlan touch, string solder)
    {
        yield return new WhyLine(
            step,
            Text($"{touch.Setting.OnTheJoint}, board at {touch.Board.DegreesCelsius:0} °C"),
            $"best of all settings of the tools on the bench in steps of {(touch.Setting.Assist is null ? "20 K" : "40 K, then 20 K")}, then of 10 K around the best",
            "tool profiles; the limits below");
        if ((touch.Setting.Air ?? touch.Setting.Assist?.Air) is { } air)
        {
            yield return new WhyLine(
                step,
                Text($"air {air.Flow.LitersPerMinute:0.#} L/min from {air.Distance.Millimeters:0.#} mm"),
                "flow and distance as stated; heat transfer of one round jet on the board by the correlation of Martin (1977)",
                "the request; tool profiles");
        }

        yield return new WhyLine(
            step,
            Text($"flows after {touch.TimeToFlow.Seconds:0.0} s"),
            $"transient heat flow in the layered board, axisymmetric finite volumes with the melt curve of {solder}, until the coldest solder is hot enough",
            $"board profile {request.BoardName}, joint profile {request.JointName}, tool profiles; the inputs below");
        yield return new WhyLine(
            step,
            Text($"hold for {touch.Dwell.Seconds:0.0} s"),
            Text($"time to flow + working time of {request.Limits.WorkingTime.Value.Seconds:0.#} s"),
            RestsOn("working_time", request.Limits.WorkingTime.Provenance));
        yield return new WhyLine(
            step,
            Text($"stop at {touch.Stop.Seconds:0.0} s"),
            Text($"the first of: longest touch, pad at its temperature limit, half of the job's laminate share used, a part near the joint {request.Limits.PartLag.Value.Seconds:0.#} s before its limit"),
            $"the limits below; joint profile {request.JointName}");
        yield return new WhyLine(
            step,
            Text($"{touch.PadPeak.DegreesCelsius:0} °C between pad and laminate, {touch.LaminateShare:P2} of the time to delamination"),
            "sum of dt / t(T) over touch and cooling, t(T) = T260 x exp(Ea/R x (1/T - 1/533 K))",
            $"limits/laminate-classes.toml, class {request.Site.Board.Laminate.ClassName}; limits/damage.toml");
    }

    private static IEnumerable<WhyLine> Passes(PlanRequest request, Plan plan)
    {
        const string Step = "passes and refit";
        Estimate<Ratio> efficiency = request.Bench.Removal.Efficiency;
        yield return new WhyLine(
            Step,
            Text($"{plan.Passes} passes"),
            Text($"each takes out {efficiency.Central.Percent:0} % of the molten solder ({efficiency.Low.Percent:0} to {efficiency.High.Percent:0} %); the fewest after which less than {CleaningQuestion.MostLowMelting.Percent:0.##} % by mass melts low"),
            RestsOn($"removal/{request.Bench.Removal.Name}", efficiency.Provenance));
        yield return new WhyLine(
            Step,
            Text($"final joint: solidus {plan.Final.Melting.Solidus.DegreesCelsius:0} °C, last liquid at {plan.Final.Freezing.End.DegreesCelsius:0} °C"),
            "equilibrium melting, and solidification without diffusion in the solid (Scheil-Gulliver), of residue + refill",
            "alloys/thermodynamics");
        yield return new WhyLine(Step, $"refit with {request.Refill.Name}", "stated in the request", "the request");
    }

    private static IEnumerable<WhyLine> Budget(PlanRequest request, Plan plan)
    {
        const string Step = "heat budget";
        yield return new WhyLine(
            Step,
            Text($"the job uses {plan.BudgetUsed.Central:P0} of the budget and {plan.LaminateShare.Central:P1} of the time to delamination ({plan.LaminateShare.Low:P1} to {plan.LaminateShare.High:P1})"),
            "governing gauge after the job less that before it; the time shares of first pass, later passes and refit added",
            "limits/damage.toml; the gauges below");
        foreach (Gauge gauge in plan.After.Gauges)
        {
            double before = plan.Before.GaugeOrNull(gauge.Kind)?.Share.Central ?? 0;
            yield return new WhyLine(
                Step,
                Text($"{gauge.Kind.Word()}: {before:P0} before, {gauge.Share.Central:P0} after ({gauge.Share.Low:P0} to {gauge.Share.High:P0})"),
                gauge.Reason,
                "limits/damage.toml; " + (gauge.Support == SupportLevel.Judgement ? "assumption (judgement)" : "form or figure from the literature"));
        }

        PriorHeat prior = request.Pad?.Prior ?? request.Prior;
        yield return new WhyLine(Step, $"earlier heat: {prior.Description}", request.Pad is null ? "stated in the request by name" : "stated in the job by name", RestsOn($"limits/prior-heat.toml {prior.Name}", prior.Provenance));
        if (request.Pad is { } pad)
        {
            yield return new WhyLine(Step, Text($"pad {pad.Ledger.Pad}: {pad.Steps.Count} logged touches, {pad.NotCounted} of them not counted"), "each with its own temperatures, logged or simulated", "the job store");
        }
    }

    private static IEnumerable<WhyLine> Limits(PlanRequest request)
    {
        PlanLimits limits = request.Limits;
        yield return Line("most_dwell", Text($"{limits.MostDwell.Value.Seconds:0.#} s"), limits.MostDwell);
        yield return Line("most_air_time", Text($"{limits.MostAirTime.Value.Seconds:0.#} s"), limits.MostAirTime);
        yield return Line("air_lead", Text($"{limits.AirLead.Value.Seconds:0.#} s"), limits.AirLead);
        yield return Line("most_iron_setting", Text($"{limits.MostIronSetting.Value.DegreesCelsius:0} °C"), limits.MostIronSetting);
        yield return Line("most_pad_temperature", Text($"{limits.MostPadTemperature.Value.DegreesCelsius:0} °C"), limits.MostPadTemperature);
        yield return Line("most_budget_share", Text($"{limits.MostBudgetShare.Value.Percent:0} %"), limits.MostBudgetShare);
        yield return Line("most_budget_after", Text($"{limits.MostBudgetAfter.Value.Percent:0} %"), limits.MostBudgetAfter);
        yield return Line("most_preheat", Text($"{limits.MostPreheat.Value.DegreesCelsius:0} °C"), limits.MostPreheat);
        yield return Line("most_added_share", Text($"{limits.MostAddedShare.Value.Percent:0} %"), limits.MostAddedShare);
        yield return Line("most_passes", Text($"{limits.MostPasses.Value}"), limits.MostPasses);
        yield return Line("part_room", Text($"{limits.PartRoom.Value.Kelvins:0.#} K"), limits.PartRoom);
        yield return Line("part_lag", Text($"{limits.PartLag.Value.Seconds:0.#} s"), limits.PartLag);
    }

    private static WhyLine Line<T>(string name, string value, Limit<T> limit)
        where T : struct => new("limits", $"{name} = {value}", limit.Note.Length > 0 ? limit.Note : "set in the request", RestsOn(name, limit.Provenance));

    private static IEnumerable<WhyLine> Inputs(PlanRequest request, Plan plan) =>
        UncertainInputs.Of(request, plan.First.Setting, plan.Melting.Uncertainty).Select(i => new WhyLine(
            "inputs with a range",
            Text($"{i.Name}: {i.Central:G4} ({i.Low:G4} to {i.High:G4}) {i.Unit}").TrimEnd(),
            request.Calibration is not null && UncertainInputs.Learnable.Contains(i.Kind)
                ? "calibrated from observed touches"
                : "central value in the plan, range in the sampling",
            RestsOn(string.Empty, i.Provenance)));

    private static IEnumerable<WhyLine> Sampling(Plan plan)
    {
        if (plan.Sampling is { } spread)
        {
            yield return new WhyLine(
                "sampling",
                Text($"time to flow {Text(spread.P10)}, {Text(spread.P50)}, {Text(spread.P90)} (one bench, five and nine in ten); in time on {spread.FinishedInTime} of {spread.Samples}"),
                "the first pass run again on benches drawn from the inputs above (Latin hypercube, fixed seed)",
                "the inputs above");
        }
    }

    private static string Text(SampledTime time) => time switch
    {
        SampledTime.At at => Text($"{at.Value.Seconds:0.0} s"),
        SampledTime.LaterThan later => Text($"over {later.Followed.Seconds:0.0} s"),
        _ => throw new InvalidOperationException("unknown kind of time"),
    };

    private static string RestsOn(string entry, Provenance provenance)
    {
        string source = provenance.Mark is EvidenceMark.Judgement
            ? "assumption (judgement)"
            : provenance.Mark is EvidenceMark.Practice ? "assumption (common practice, no source)" : $"{provenance.Source} ({MarkOf(provenance.Mark)})";
        return entry.Length > 0 ? $"{entry}: {source}" : source;
    }

    private static string MarkOf(EvidenceMark mark) => mark switch
    {
        EvidenceMark.Seen => "read in the source",
        EvidenceMark.SecondHand => "second-hand",
        EvidenceMark.Computed => "computed",
        EvidenceMark.Memory => "from memory",
        EvidenceMark.Judgement => "judgement",
        EvidenceMark.Practice => "practice",
        _ => throw new ArgumentOutOfRangeException(nameof(mark)),
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
