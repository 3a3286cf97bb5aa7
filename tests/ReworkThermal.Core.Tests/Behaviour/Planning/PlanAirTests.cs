using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>Hot air over a preheater in the search; the request is the invented demo with a nozzle on the bench.</summary>
public class PlanAirTests
{
    private static readonly HotAir _air = new(
        PlanDemo.Workshop.Profiles.Nozzles["round-6"],
        VolumeFlow.FromLitersPerMinute(60),
        Length.FromMillimeters(18));

    private static readonly Lazy<(IReadOnlyList<Station> Air, IReadOnlyList<Station> Iron)> _stations = new(Stations);

    [Fact]
    public void Air_is_tried_at_several_settings_with_heat_from_below_and_without()
    {
        Assert.True(_stations.Value.Air.Select(s => s.Setting.Set).Distinct().Count() >= 3);
        Assert.True(_stations.Value.Air.Select(s => s.Setting.Preheat).Distinct().Count() >= 3);
        Assert.Contains(_stations.Value.Air, s => s.Setting.Preheat is null);
    }

    /// <summary>Common practice, no source: air warms a joint on planes more slowly than a tip on the pad.</summary>
    [Fact]
    public void Air_is_slower_than_a_tip_at_the_same_setting_and_preheat()
    {
        int compared = 0;
        foreach (Station air in _stations.Value.Air.Where(a => a.Setting.Set.DegreesCelsius <= 400))
        {
            Station? iron = _stations.Value.Iron.FirstOrDefault(s => s.Setting.Preheat == air.Setting.Preheat && s.Setting.Set >= air.Setting.Set);
            if (iron is not null)
            {
                compared++;
                Assert.True(air.Bare.ColdestAt(5) < iron.Bare.ColdestAt(5));
            }
        }

        Assert.True(compared > 0);
    }

    [Fact]
    public void More_air_heats_more()
    {
        double Coldest(double filmFactor) => _stations.Value.Air[0] is { } station
            ? Simulator().Run(station.Setting with { Air = _air with { FilmFactor = filmFactor } })
            : double.NaN;

        Assert.True(Coldest(1.4) > Coldest(0.7) + 2);
    }

    [Fact]
    public void A_plan_with_air_names_the_nozzle_and_keeps_to_its_own_longest_touch()
    {
        PlanRequest request = WithAir() with { Limits = PlanDemo.Request.Limits with { LeadFreeOnly = false } };
        PlanOutcome outcome = PlanDemo.Search(request);
        PlanOutcome.Planned planned = Assert.IsType<PlanOutcome.Planned>(outcome);
        Assert.All(planned.Plans.SelectMany(p => new[] { p.First, p.Refit }), touch =>
        {
            Assert.True((touch.Setting.Iron is null) != (touch.Setting.Air is null));
            Duration most = touch.Setting.Air is null ? request.Limits.MostDwell.Value : request.Limits.MostAirTime.Value;
            Assert.True(touch.Stop <= most);
        });
    }

    private static PlanRequest WithAir() => PlanDemo.Request with
    {
        Bench = PlanDemo.Request.Bench with
        {
            Irons = [PlanDemo.Request.Bench.Irons[0]],
            Dilutions = [Shelf.Dilution("Bi58Sn42")],
            Air = [_air],
        },
    };

    private static (IReadOnlyList<Station> Air, IReadOnlyList<Station> Iron) Stations()
    {
        Workload work = Workload.Of(WithAir(), PlanDemo.Workshop.Limits, Shelf.Alloys.Properties);
        IReadOnlyList<Station> all = new StationBuilder(work, new TouchSimulator(work), new SolderHeat(Shelf.Alloys.Properties))
            .Build(closely: false, PlanDemo.Melting("Sn96.5Ag3Cu0.5"), PlanDemo.Melting("Sn63Pb37"), null, CancellationToken.None);
        return ([.. all.Where(s => s.Setting.Air is not null)], [.. all.Where(s => s.Setting.Air is null)]);
    }

    private static OneRun Simulator() => new(new TouchSimulator(Workload.Of(WithAir(), PlanDemo.Workshop.Limits, Shelf.Alloys.Properties)));

    private sealed class OneRun(TouchSimulator simulator)
    {
        public double Run(ToolSetting setting) => simulator.Run(
            new SolderHeat(Shelf.Alloys.Properties).CurveOf(PlanDemo.Melting("Sn63Pb37")),
            183,
            setting,
            Duration.FromSeconds(20),
            Duration.FromSeconds(20),
            RunPurpose.Plan,
            CancellationToken.None)!.ColdestAt(20);
    }
}
