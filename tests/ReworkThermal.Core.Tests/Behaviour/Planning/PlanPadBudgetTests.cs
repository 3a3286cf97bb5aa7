using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Searching;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>What a pad has left of its heat budget is a limit of the search like any other; the demo request is invented.</summary>
public class PlanPadBudgetTests(ITestOutputHelper output)
{
    private static readonly PlanRequest _few = PlanDemo.Request with
    {
        Bench = PlanDemo.Request.Bench with { Irons = [PlanDemo.Request.Bench.Irons[1]], Air = [], Dilutions = [Shelf.Dilution("Sn63Pb37"), Shelf.Dilution("Bi58Sn42")] },
    };

    [Theory]
    [InlineData(80)]
    [InlineData(90)]
    [InlineData(100)]
    public void No_plan_brings_a_gauge_past_what_is_allowed(double percent)
    {
        PlanOutcome outcome = PlanDemo.Search(With(_few, percent));
        output.WriteLine(outcome is PlanOutcome.NoPlan none ? none.Reason : string.Empty);
        Assert.All(Assert.IsType<PlanOutcome.Planned>(outcome).Plans, p => Assert.All(p.After.Gauges, g => Assert.True(g.Share.Central <= percent / 100)));
    }

    [Fact]
    public void What_takes_too_many_melts_for_the_pad_is_ruled_out_by_name_and_figure()
    {
        PlanOutcome outcome = PlanDemo.Search(With(_few, 70));
        RuledOut reason = Assert.Single(outcome.RuledOut, r => r.What == "Bi58Sn42");
        output.WriteLine(reason.Why);
        Assert.Matches(@"^(would work \()?\d+\.\d mg", reason.Why);
    }

    [Theory]
    [InlineData(85)]
    [InlineData(100)]
    public void Every_alloy_at_hand_is_in_a_plan_or_ruled_out(double percent)
    {
        PlanOutcome.Planned planned = Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(With(PlanDemo.Request, percent)));
        HashSet<string> said = [.. planned.Plans.Select(p => p.Alloy?.Name ?? string.Empty), .. planned.RuledOut.Select(r => r.What)];
        Assert.All(PlanDemo.Request.Bench.Dilutions, a => Assert.Contains(a.Name, said));
        foreach (RuledOut reason in planned.RuledOut)
        {
            output.WriteLine($"{reason.What}: {reason.Why}");
        }
    }

    [Fact]
    public void A_pad_that_bears_no_two_melts_more_gets_no_plan_and_the_answer_says_by_how_much()
    {
        PlanOutcome.NoPlan none = Assert.IsType<PlanOutcome.NoPlan>(PlanDemo.Search(With(_few, 45)));
        output.WriteLine(none.Reason);
        Assert.Contains("2 melts, the fewest", none.Reason, StringComparison.Ordinal);
        Assert.Contains("most_budget_after", none.Reason, StringComparison.Ordinal);
    }

    /// <summary>The quick bound is below what the whole job leaves: it rules out nothing that would do.</summary>
    [Fact]
    public void Melts_alone_never_cost_more_than_the_whole_job()
    {
        Workload work = Workload.Of(PlanDemo.Request, PlanDemo.Workshop.Limits, Shelf.Alloys.Properties);
        Assert.True(work.BudgetAfterMelts(2).Share.Central > work.BudgetAfterMelts(0).Share.Central + 0.05);
        Assert.All(PlanDemo.Planned.Plans, p => Assert.True(work.BudgetAfterMelts(p.Passes + 1).Share.Central <= p.After.Share.Central + 1e-12));
    }

    [Fact]
    public void A_limit_above_one_lets_a_spent_pad_be_planned_all_the_same()
    {
        PriorHeat worst = PlanDemo.Workshop.Limits.Priors.MaxBy(p => Workload.Of(_few with { Prior = p }, PlanDemo.Workshop.Limits, Shelf.Alloys.Properties).BudgetAfterMelts(2).Share.Central)!;
        double after = Workload.Of(_few with { Prior = worst }, PlanDemo.Workshop.Limits, Shelf.Alloys.Properties).BudgetAfterMelts(2).Share.Central;
        output.WriteLine(FormattableString.Invariant($"{worst.Name}: {after:P0}"));
        Assert.True(after > 1);
        Assert.IsType<PlanOutcome.NoPlan>(PlanDemo.Search(With(_few, 100) with { Prior = worst }));
        Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(With(_few, 400) with { Prior = worst }));
    }

    private static PlanRequest With(PlanRequest request, double percent) => request with
    {
        Limits = request.Limits with { MostBudgetAfter = request.Limits.MostBudgetAfter with { Value = Ratio.FromPercent(percent) } },
    };
}
