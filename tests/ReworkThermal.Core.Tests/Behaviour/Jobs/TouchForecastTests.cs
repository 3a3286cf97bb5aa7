using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Dwelling;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;
using ToolSetting = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.Core.Tests.Behaviour.Jobs;

/// <summary>What the next touch would do.</summary>
public sealed class TouchForecastTests
{
    [Fact]
    public void Hotter_or_longer_never_costs_less()
    {
        double previous = 0;
        foreach ((double set, double seconds) in ((double, double)[])[(300, 2), (300, 4), (350, 4), (400, 4), (400, 8)])
        {
            double cost = Forecast(set, seconds).Cost.AddedShareOf(GaugeKind.Laminate)!.Value.Central;
            Assert.True(cost > previous, FormattableString.Invariant($"{set} °C for {seconds} s costs {cost}"));
            previous = cost;
        }
    }

    [Fact]
    public void The_longest_safe_dwell_keeps_the_limit_and_a_spent_pad_has_none()
    {
        TouchForecast fresh = Forecast(400, 4);
        switch (fresh.Safe)
        {
            case SafeDwell.UpTo upTo:
                Assert.True(fresh.Limit.Keeps(upTo.After));
                break;
            case SafeDwell.WholeRange whole:
                Assert.True(fresh.Limit.Keeps(whole.After));
                break;
            default:
                Assert.Fail("a fresh pad has a safe dwell");
                break;
        }

        TouchForecast spent = Forecast(400, 4, [.. Enumerable.Range(0, 12).Select(i => JobBenches.Steady(260, 5, i * 5))]);
        Assert.Equal(DamageBand.Stop, spent.Cost.Before.Band);
        _ = Assert.IsType<SafeDwell.None>(spent.Safe);
    }

    [Fact]
    public void Nothing_may_be_pulled_while_a_joint_of_the_part_is_cold()
    {
        TouchForecast alone = Forecast(420, 20, preheated: true);
        Assert.True(alone.Simulation.TimeToFlow is { } time && time.Seconds < 20);
        Assert.IsNotType<PullVerdict.DoNotPull>(alone.Pull.Verdict);

        TouchForecast together = Forecast(420, 20, preheated: true, withColdNeighbour: true);
        PullVerdict.DoNotPull verdict = Assert.IsType<PullVerdict.DoNotPull>(together.Pull.Verdict);
        Assert.Equal(["2"], verdict.Joints);
    }

    [Fact]
    public void On_a_cold_bench_nothing_may_be_pulled()
    {
        JobBench bench = JobBenches.New();
        PadAccount pad = JobBenches.Judge(JobBenches.Ledger());
        PullCheck check = new TouchForecasting(bench).PullNow(pad, [pad], Temperature.FromDegreesCelsius(23));
        _ = Assert.IsType<PullVerdict.DoNotPull>(check.Verdict);
    }

    [Fact]
    public void Settings_that_cannot_be_simulated_are_refused_with_the_reason()
    {
        PadAccount pad = JobBenches.Judge(JobBenches.Ledger());
        ForecastOutcome outcome = new TouchForecasting(JobBenches.New()).Of(
            pad, [pad], new ToolUse([new ToolSetting.Iron("medium", Temperature.FromDegreesCelsius(999))]), Duration.FromSeconds(2));
        Assert.Contains("range", Assert.IsType<ForecastOutcome.Failed>(outcome).Reason, StringComparison.Ordinal);
    }

    private static TouchForecast Forecast(double setC, double seconds, IReadOnlyList<Exposure>? touches = null, bool preheated = false, bool withColdNeighbour = false)
    {
        PadAccount pad = JobBenches.Judge(JobBenches.Ledger(touches ?? []));
        PadAccount neighbour = pad with { Ledger = pad.Ledger with { Pad = new PadId("2") } };
        List<ToolSetting> tools = [new ToolSetting.Iron("heavy", Temperature.FromDegreesCelsius(setC))];
        if (preheated)
        {
            tools.Add(new ToolSetting.Preheater("hot-plate", Temperature.FromDegreesCelsius(150)));
        }

        ForecastOutcome outcome = new TouchForecasting(JobBenches.New()).Of(
            pad, withColdNeighbour ? [pad, neighbour] : [pad], new ToolUse(tools), Duration.FromSeconds(seconds));
        return Assert.IsType<ForecastOutcome.Made>(outcome).Forecast;
    }
}
