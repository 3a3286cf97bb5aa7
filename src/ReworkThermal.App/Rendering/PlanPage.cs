using System.Globalization;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Rendering;

/// <summary>One plan as text.</summary>
internal static class PlanPage
{
    /// <summary>Writes a plan.</summary>
    /// <param name="page">Where to write.</param>
    /// <param name="number">Its number in the answer, from 1.</param>
    /// <param name="plan">The plan.</param>
    internal static void Write(Page page, int number, PlanLine plan)
    {
        page.Heading(PlanWords.PlanHeading(number, plan.Kind));
        List<IReadOnlyList<string>> rows =
        [
            [PlanWords.Add, AddedOf(plan)],
            [PlanWords.MixFlow, PlanWords.WithUncertainty(Numerals.Celsius(plan.Flow, 0), Numerals.Kelvin(plan.Uncertainty.Kelvins, 0))],
            .. Touch(PlanWords.FirstPass, plan.First),
            [PlanWords.Passes, plan.Passes.ToString(CultureInfo.InvariantCulture)],
            .. Touch(PlanWords.Refit, plan.Refit),
            [PlanWords.FinalJoint, FinalOf(plan.Final)],
            [PlanWords.HeatBudget, PlanWords.NowAndAfter(Numerals.Percent(plan.BudgetNow.Central), Numerals.Percent(plan.BudgetAfter.Central), RangeOf(plan.BudgetShare))],
            [string.Empty, plan.BudgetReason],
            [PlanWords.LaminateShare, RangeOf(plan.LaminateShare)],
            [PlanWords.BindingLimit, plan.BindingLimit],
        ];
        if (plan.TimeToFlowSpread is { } spread)
        {
            rows.AddRange(Sampled(spread));
        }

        page.Table(["", ""], rows);
    }

    private static string AddedOf(PlanLine plan)
    {
        if (plan.Alloy is not { } alloy)
        {
            return PlanWords.Nothing;
        }

        string amount = PlanWords.Amount(Numerals.Milligrams(plan.AddedMass), alloy, Numerals.Percent(plan.Share));
        return plan.WireLength is { } wire ? PlanWords.AsWire(amount, Numerals.Millimetres(wire)) : amount;
    }

    private static IEnumerable<IReadOnlyList<string>> Touch(string name, TouchLine touch)
    {
        string tool = touch switch
        {
            { Iron: { } tip, IronSetting: { } set, Air: { } help } => PlanWords.IronAfterAir(PlanWords.IronAt(tip, Numerals.Celsius(set, 0)), Numerals.Seconds(help.Lead), AirOf(help)),
            { Iron: { } tip, IronSetting: { } set } => PlanWords.IronAt(tip, Numerals.Celsius(set, 0)),
            { Air: { } air } => AirOf(air),
            _ => PlanWords.NotUsed,
        };
        string heat = touch.Preheater is { } preheater
            ? PlanWords.PreheatAt(preheater, Numerals.Celsius(touch.Board, 0))
            : PlanWords.NoPreheat;
        yield return [name, PlanWords.Tools(tool, heat)];
        yield return
        [
            string.Empty,
            PlanWords.Times(Numerals.Seconds(touch.TimeToFlow), Numerals.Seconds(touch.Dwell), Numerals.Seconds(touch.Stop), touch.StopReason),
        ];
        yield return [string.Empty, PlanWords.PadPeak(Numerals.Celsius(touch.PadPeak, 0))];
    }

    private static string AirOf(AirLine air) =>
        PlanWords.AirAt(air.Nozzle, Numerals.Celsius(air.Setting, 0), Numerals.LitresPerMinute(air.Flow), Numerals.Millimetres(air.Distance));

    private static IEnumerable<IReadOnlyList<string>> Sampled(TimeSpread spread)
    {
        yield return [PlanWords.TimeToFlow, SampledOf(spread)];
        yield return [string.Empty, PlanWords.Finished(spread.FinishedInTime, spread.Samples)];
        if (spread.PadTooHot > 0)
        {
            yield return [string.Empty, PlanWords.PadTooHot(spread.PadTooHot, spread.Samples)];
        }

        foreach (InfluenceLine influence in spread.Influences.Take(2))
        {
            yield return [string.Empty, PlanWords.Influence(influence.HowToLearn, influence.Input, Numerals.Percent(influence.Share))];
        }
    }

    private static string SampledOf(TimeSpread spread) => PlanWords.Sampled(
        spread.P50 is { } middle ? PlanWords.OnMiddleBench(Numerals.Seconds(middle)) : PlanWords.MiddleBenchNever(Numerals.Seconds(spread.Followed)),
        spread.P10 is { } early ? PlanWords.OneInTenUnder(Numerals.Seconds(early)) : null,
        spread.P90 is { } late ? PlanWords.OneInTenOver(Numerals.Seconds(late)) : PlanWords.OneInTenNever(Numerals.Seconds(spread.Followed)));

    private static string FinalOf(FinalJointLine final) => PlanWords.FinalIs(
        final.Composition.ToString(),
        Numerals.Celsius(final.Solidus, 0),
        Numerals.Celsius(final.ScheilEnd, 0),
        Numerals.Percent(final.LiquidFractionAt100C),
        final.IsClean);

    private static string RangeOf(Spread spread) =>
        PlanWords.Range(Numerals.Percent(spread.Central), Numerals.Percent(spread.Low), Numerals.Percent(spread.High));
}
