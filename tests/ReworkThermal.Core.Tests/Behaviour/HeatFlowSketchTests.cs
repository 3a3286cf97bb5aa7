using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Readings;
using Xunit.Abstractions;
using static ReworkThermal.Core.Tests.HeatFlowBench;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>
/// An independent sketch of a plated hole on 1.6 mm with four relief spokes per plane, 350 °C tip, 15 kW/m2K, 5 s: it catches gross
/// errors only. Its contact area and its leg beyond the board are not recorded; half the pad wetted (radius 0.7 mm) comes nearest.
/// Without a plane nothing but those two unknowns bounds the temperature, so that row has the wider band.
/// </summary>
public sealed class HeatFlowSketchTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(0, 25, 235, 201, 60)]
    [InlineData(1, 25, 196, 157, 25)]
    [InlineData(2, 25, 178, 130, 25)]
    [InlineData(4, 25, 147, 92, 25)]
    [InlineData(2, 100, 218, 180, 25)]
    public void Through_hole_is_near_the_sketch(int planes, double start, double top, double bottom, double band)
    {
        HeatRun run = Run(Problem(Board(planes), Joint(planes, FourSpokes(), 0), Tip(radiusMm: 0.7), 5, start));
        double near = run.Probes[ProbeNames.NearPad].At(5);
        double far = run.Probes[ProbeNames.FarPad].At(5);

        output.WriteLine($"{planes} planes from {start} °C: near {near:0} (sketch {top}), far {far:0} (sketch {bottom})");
        Assert.InRange(near, top - band, top + band);
        Assert.InRange(far, bottom - band, bottom + band);
    }
}
