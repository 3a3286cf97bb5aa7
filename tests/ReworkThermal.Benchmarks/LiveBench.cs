using System.Diagnostics;
using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using UnitsNet;

namespace ReworkThermal.Benchmarks;

/// <summary>What the simulation behind the bench clock costs: a touch of 8 s, then cooling, read ten times a second.</summary>
internal static class LiveBench
{
    private const double BenchSeconds = 20;
    private const double TouchSeconds = 8;
    private const int ReadingsPerSecond = 10;
    private const double WantedShare = 0.05;
    private const int Runs = 50;

    internal static Temperature TwentySeconds(JointProblem joint)
    {
        TipSource tip = joint.Touches[0].Tip!;
        LiveRun live = LiveRun.Start(joint, [tip], []) ?? throw new InvalidOperationException("the board did not settle");
        live.Put(tip, null, BoardSide.Bottom);
        Temperature read = default;
        for (int tick = 1; tick <= BenchSeconds * ReadingsPerSecond; tick++)
        {
            if (tick == (TouchSeconds * ReadingsPerSecond) + 1)
            {
                live.Lift();
            }

            if (!live.Advance(Duration.FromSeconds(1.0 / ReadingsPerSecond)))
            {
                throw new InvalidOperationException("the live run did not converge");
            }

            foreach (string probe in live.ProbeNamesInOrder)
            {
                read = live.Read(probe);
            }
        }

        return read;
    }

    /// <summary>Prints the share of a core that a live run takes, cold and warm.</summary>
    internal static int Print()
    {
        JointProblem joint = DemoJoint.Problem(BenchSeconds);
        List<double> milliseconds = [];
        for (int run = 0; run < Runs; run++)
        {
            Stopwatch watch = Stopwatch.StartNew();
            TwentySeconds(joint);
            milliseconds.Add(watch.Elapsed.TotalMilliseconds);
        }

        double cold = milliseconds[0];
        milliseconds.Sort();
        double median = milliseconds[Runs / 2];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"live run of {BenchSeconds:0} s bench time: first {cold:0.0} ms = {Share(cold):0.00} % of a core, median {median:0.0} ms = {Share(median):0.00} % of a core (wanted: under {100 * WantedShare:0} %)"));
        return 0;
    }

    private static double Share(double milliseconds) => 100 * milliseconds / (1000 * BenchSeconds);
}
