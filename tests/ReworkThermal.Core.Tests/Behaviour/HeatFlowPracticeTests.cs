using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.Tools;
using UnitsNet;
using Xunit.Abstractions;
using static ReworkThermal.Core.Tests.HeatFlowBench;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>What every technician knows. Common practice, no source.</summary>
public sealed class HeatFlowPracticeTests(ITestOutputHelper output)
{
    [Fact]
    public void More_layers_and_planes_slow_the_far_side_most()
    {
        HeatRun one = Run(Problem(Board(1), Joint(1, FourSpokes()), Tip(), 5));
        HeatRun four = Run(Problem(Board(4), Joint(4, FourSpokes()), Tip(), 5));
        double near = one.Probes[ProbeNames.NearPad].At(5) - four.Probes[ProbeNames.NearPad].At(5);
        double far = one.Probes[ProbeNames.FarPad].At(5) - four.Probes[ProbeNames.FarPad].At(5);

        output.WriteLine($"three more planes cost {near:0} K on the near side, {far:0} K on the far side");
        Assert.True(near > 10);
        Assert.True(far > near);
    }

    [Fact]
    public void Preheat_shortens_the_dwell_and_evens_top_and_bottom()
    {
        HeatRun cold = Run(Problem(Board(1), Joint(1, FourSpokes()), Tip(contact: 40000), 20));
        HeatRun warm = Run(Problem(Board(1), Joint(1, FourSpokes()), Tip(contact: 40000), 20, start: 110));

        Assert.NotNull(cold.Flow!.SecondsToFlow);
        Assert.NotNull(warm.Flow!.SecondsToFlow);
        Assert.True(warm.Flow.SecondsToFlow < cold.Flow.SecondsToFlow);
        Assert.True(Gap(warm, 3) < Gap(cold, 3));
    }

    [Fact]
    public void A_flooded_tip_beats_a_dry_one()
    {
        HeatRun dry = Run(Problem(Board(1), Joint(1, FourSpokes()), Tip(contact: 5e3), 10));
        HeatRun flooded = Run(Problem(Board(1), Joint(1, FourSpokes()), Tip(contact: 1e5), 10));

        Assert.Null(dry.Flow!.SecondsToFlow);
        Assert.NotNull(flooded.Flow!.SecondsToFlow);
    }

    [Fact]
    public void A_small_tip_sags_on_a_heavy_plane_and_a_heavy_one_less()
    {
        Joint heavy = Joint(4, new PlaneConnection.Direct());
        TipSource small = Tip(350, 50000, heat: 0.17, watts: 50, resistance: 5, radiusMm: 0.6);
        TipSource large = Tip(350, 50000, heat: 4.3, watts: 130, resistance: 0.7, radiusMm: 1);
        double fine = 350 - Run(Problem(Board(4), heavy, small, 5)).Probes[ProbeNames.Tip].At(5);
        double broad = 350 - Run(Problem(Board(4), heavy, large, 5)).Probes[ProbeNames.Tip].At(5);

        output.WriteLine($"after 5 s on four planes the fine tip is {fine:0} K below its setting, the heavy one {broad:0} K");
        Assert.True(fine > 30);
        Assert.True(broad < fine / 2);
    }

    [Fact]
    public void Air_alone_struggles_on_a_leg_tied_to_inner_planes()
    {
        AirSetting setting = new(RoundNozzle(), Celsius(350), VolumeFlow.FromLitersPerMinute(80), Mm(12), Celsius(25));
        JetSource jet = Assert.IsType<SettingOutcome<JetSource>.Ready>(setting.ToSource()).Source;
        JointProblem iron = Problem(Board(2), Joint(2, FourSpokes()), Tip(380, contact: 1e5), 10);
        JointProblem air = iron with { Touches = [iron.Touches[0] with { Tip = null, Jet = jet }] };

        Assert.Null(Run(air).Flow!.SecondsToFlow);
        Assert.NotNull(Run(iron).Flow!.SecondsToFlow);
    }

    [Fact]
    public void Touches_in_a_row_warm_the_board()
    {
        TipSource tip = Tip(350, 20000, heat: 2, watts: 90, resistance: 1);
        JointProblem problem = Problem(Board(2), Joint(2, FourSpokes()), tip, 4) with
        {
            Touches = [.. Enumerable.Range(0, 6).Select(i => new Touch { Start = Seconds(10 * i), Span = Seconds(4), Side = BoardSide.Top, Tip = tip })],
            End = Seconds(70),
        };
        HeatRun run = Run(problem);
        double[] peaks = [.. Enumerable.Range(0, 6).Select(i => run.Probes[ProbeNames.FarPad].At((10 * i) + 4))];

        output.WriteLine($"{run.Mesh}; far pad at the end of each touch: " + string.Join(", ", peaks.Select(p => $"{p:0.0}")) + " °C");
        for (int i = 1; i < peaks.Length; i++)
        {
            Assert.True(peaks[i] > peaks[i - 1]);
        }

        Assert.True(run.Probes[ProbeNames.FarPad].At(70) < peaks[^1] - 50);
        Assert.InRange(run.Energy.BalanceError, 0, 1e-3);
    }

    [Fact]
    public void Nothing_rings_while_the_solder_melts()
    {
        HeatRun run = Run(Problem(Board(1), Joint(1, FourSpokes()), Tip(contact: 40000), 6));
        ReadOnlySpan<double> coldest = run.Probes[ProbeNames.ColdestSolder].Celsius;
        for (int i = 1; i < coldest.Length; i++)
        {
            Assert.True(coldest[i] >= coldest[i - 1] - 1e-3, $"the coldest solder fell from {coldest[i - 1]} to {coldest[i]} °C while heated");
            Assert.True(run.LiquidShare[i] >= run.LiquidShare[i - 1] - 1e-4);
        }

        Assert.Equal(1, run.LiquidShare[^1], 1e-9);
    }

    private static double Gap(HeatRun run, double seconds) => run.Probes[ProbeNames.NearPad].At(seconds) - run.Probes[ProbeNames.FarPad].At(seconds);
}
