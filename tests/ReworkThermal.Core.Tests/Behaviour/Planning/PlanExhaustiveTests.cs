using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>The search against a coarse grid on which every candidate is run, whatever its bound says.</summary>
public class PlanExhaustiveTests(ITestOutputHelper output)
{
    /// <summary>How much worse than the grid's best the search may be, as a share of the budget.</summary>
    private const double Allowed = 0.02;

    private static readonly string[] _alloys = ["Bi58Sn42", "Sn63Pb37", "In52Sn48"];

    private static readonly PlanRequest _request = PlanDemo.Request with
    {
        Bench = PlanDemo.Request.Bench with
        {
            Irons = [PlanDemo.Request.Bench.Irons[0]],
            Dilutions = [.. _alloys.Select(Shelf.Dilution)],
        },
    };

    private static readonly Lazy<IReadOnlyList<Plan>> _grid = new(() => Enumerated(_request));

    [Fact]
    public void The_smallest_budget_is_not_worse_than_on_the_grid()
    {
        Plan found = Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(_request)).Plans.Single(p => p.Kind == PlanKind.SmallestBudget);
        double best = _grid.Value.Min(p => p.BudgetUsed.Central);
        Plan at = _grid.Value.MinBy(p => p.BudgetUsed.Central)!;
        foreach (Plan plan in new[] { at, found })
        {
            output.WriteLine(FormattableString.Invariant($"{plan.Alloy?.Name} {plan.Added.Milligrams:0.0} mg, {plan.First.Setting.Set.DegreesCelsius:0} C, board {plan.First.Board.DegreesCelsius:0} C, {plan.Passes} passes, laminate {plan.LaminateShare.Central:P2}"));
        }

        output.WriteLine(FormattableString.Invariant($"{_grid.Value.Count} plans on the grid, best {best:P2}, found {found.BudgetUsed.Central:P2}"));
        Assert.True(_grid.Value.Count >= 10);
        Assert.True(found.BudgetUsed.Central <= best + Allowed);
    }

    [Fact]
    public void The_coolest_pad_is_not_worse_than_on_the_grid()
    {
        IReadOnlyList<Plan> plans = Assert.IsType<PlanOutcome.Planned>(PlanDemo.Search(_request)).Plans;
        double found = plans.Min(p => p.LaminateShare.Central);
        double best = _grid.Value.Min(p => p.LaminateShare.Central);
        output.WriteLine(FormattableString.Invariant($"best {best:P2}, found {found:P2}"));
        Assert.True(found <= best + Allowed);
    }

    [Fact]
    public void With_iron_and_air_together_neither_is_worse_than_on_the_grid()
    {
        List<Plan> grid = Enumerated(PlanDemo.Assisted);
        IReadOnlyList<Plan> plans = PlanDemo.PlannedAssisted.Plans;
        double budget = plans.Single(p => p.Kind == PlanKind.SmallestBudget).BudgetUsed.Central;
        double laminate = plans.Min(p => p.LaminateShare.Central);
        output.WriteLine(FormattableString.Invariant($"{grid.Count} plans on the grid, best budget {grid.Min(p => p.BudgetUsed.Central):P2}, found {budget:P2}; best laminate {grid.Min(p => p.LaminateShare.Central):P2}, found {laminate:P2}"));
        Assert.Contains(grid, p => p.First.Setting.Assist is not null);
        Assert.True(grid.Count >= 10);
        Assert.True(budget <= grid.Min(p => p.BudgetUsed.Central) + Allowed);
        Assert.True(laminate <= grid.Min(p => p.LaminateShare.Central) + Allowed);
    }

    private static List<Plan> Enumerated(PlanRequest request)
    {
        Workload work = Workload.Of(request, PlanDemo.Workshop.Limits, Shelf.Alloys.Properties);
        MixOptions mixes = MixOptions.Make(Shelf.Engine, request, work.Solder, CancellationToken.None, out _)!;
        MeltingBehaviour refill = Assert.IsType<MeltingOutcome.Found>(Shelf.Engine.MeltingOf(request.Refill.Fractions)).Behaviour;
        SolderHeat heat = new(Shelf.Alloys.Properties);
        TouchSimulator simulator = new(work);
        StationBuilder builder = new(work, simulator, heat);
        IReadOnlyList<Station> stations = builder.Build(closely: false, mixes.AsIs.Melting, refill, null, CancellationToken.None);
        stations = [.. stations, .. Assisted(request, builder, heat.CurveWithoutMelting(mixes.AsIs.Melting), heat.CurveOf(refill), refill.Flow.DegreesCelsius)];
        PassCounts counts = PassCounts.Make(Shelf.Engine, work, mixes, CancellationToken.None);
        Confirmation confirmation = new(work, Shelf.Engine, simulator, heat, counts, builder.LaminatePerTouch);
        List<Plan> plans = [];
        foreach (MixOption mix in mixes.Diluted.Where((_, i) => i % 3 == 0).Prepend(mixes.AsIs))
        {
            foreach (Station station in stations.Where((_, i) => i % 2 == 0))
            {
                // Every refit with the same heat from below would do; the coolest iron that flows is the usual choice at a bench.
                TouchPlan? refit = stations.Where(s => s.Setting.Preheat == station.Setting.Preheat).Select(s => s.Refit).OfType<TouchPlan>().MinBy(r => r.LaminateShare);
                Candidate candidate = new(mix, station with { Refit = refit }, default, default);
                if (refit is not null && confirmation.Confirm(candidate, CancellationToken.None) is { } plan)
                {
                    plans.Add(plan);
                }
            }
        }

        return plans;
    }

    // Every iron setting of 20 K steps with every air setting of 50 K steps, nothing left out; without a preheater.
    private static IEnumerable<Station> Assisted(PlanRequest request, StationBuilder builder, EnthalpyCurve bare, EnthalpyCurve refill, double flowC) =>
        from air in request.Bench.Preheaters.Count == 0 ? request.Bench.Air : []
        from airC in new double[] { 300, 350, 400, 450 }
        from iron in request.Bench.Irons
        from ironC in Enumerable.Range(0, 7).Select(i => 400.0 - (20 * i))
        let setting = new ToolSetting(iron, Temperature.FromDegreesCelsius(ironC), null, null, new AirAssist(air, Temperature.FromDegreesCelsius(airC), request.Limits.AirLead.Value))
        select builder.Run(setting, bare, refill, flowC, CancellationToken.None);
}
