using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Readings;
using Xunit.Abstractions;
using static ReworkThermal.Core.Tests.HeatFlowBench;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.Behaviour;

public sealed class HeatFlowLiveTests(ITestOutputHelper output)
{
    [Fact]
    public void A_live_run_in_tenths_of_a_second_agrees_with_the_planned_run()
    {
        TipSource tip = Tip(350, 20000, heat: 2, watts: 90, resistance: 1);
        JointProblem problem = Problem(Board(2), Joint(2, FourSpokes()), tip, 5) with { End = Seconds(8) };
        HeatRun planned = Run(problem);
        LiveRun live = Assert.IsType<LiveRun>(LiveRun.Start(problem, [tip], []));
        live.Put(tip, null, BoardSide.Top);
        for (int i = 0; i < 50; i++)
        {
            Assert.True(live.Advance(Seconds(0.1)));
        }

        live.Lift();
        for (int i = 0; i < 30; i++)
        {
            Assert.True(live.Advance(Seconds(0.1)));
        }

        Assert.Equal(8, live.Elapsed.Seconds, 1e-9);
        Assert.InRange(live.BalanceError, 0, 1e-3);
        foreach (string probe in new[] { ProbeNames.NearPad, ProbeNames.FarPad, ProbeNames.ColdestSolder, ProbeNames.Tip })
        {
            double worst = new[] { 1, 3, 5, 6, 8 }.Max(t => Math.Abs(live.History(probe).At(t) - planned.Probes[probe].At(t)));
            output.WriteLine($"{probe}: live and planned differ by {worst:0.00} K at most");
            Assert.InRange(worst, 0, 1);
        }
    }

    [Fact]
    public void A_cancelled_run_stops()
    {
        using CancellationTokenSource source = new();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => HeatSolver.Solve(Problem(Board(1), Joint(1, FourSpokes()), Tip(), 5), null, source.Token));
    }

    [Fact]
    public void The_tip_recovers_between_touches()
    {
        TipSource tip = Tip(350, 50000, heat: 0.17, watts: 50, resistance: 5, radiusMm: 0.6);
        JointProblem problem = Problem(Board(2), Joint(2, new PlaneConnection.Direct()), tip, 3) with { End = Seconds(20) };
        HeatRun run = Run(problem);

        Assert.True(run.Probes[ProbeNames.Tip].At(3) < 330);
        Assert.InRange(run.Probes[ProbeNames.Tip].At(20), 347, 350.01);
    }
}
