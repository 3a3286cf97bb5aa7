using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Meshing;

namespace ReworkThermal.Core.HeatFlow.Readings;

/// <summary>Adds to a run what only a joint has: when it flowed, how the neighbours fared, what was assumed.</summary>
internal static class JointReport
{
    private static readonly string[] _assumptions =
    [
        "The joint stands in the middle of a round board of the same area; legs, holes and pads that are not round have the same area, fillets the same volume.",
        "Signal layers carry no heat along the board (published boards: only continuous planes do); they count with their heat capacity.",
        "Solder has one density, solid and liquid; it conducts like a mixture of both while it melts, and does not stream.",
        "The tip is two halves of its heat capacity joined by the shaft's resistance; its controller goes from off to full power within 2 K.",
    ];

    private static readonly string[] _caveats =
    [
        "No published measurement of the conductance of a tip on a molten joint was found; it moves the result as much as a plane does.",
        "No measured joint temperature against time for hand soldering of a multilayer hole was found: the model is checked against exact solutions and other programs, not against a bench.",
        "The laminate's specific heat above its glass transition is an estimate.",
    ];

    internal static HeatRun Make(JointProblem problem, JointRunner runner, HeatRun run)
    {
        List<string> assumptions = [.. _assumptions];
        assumptions.AddRange(problem.Touches.Where(t => t.Tip is not null).Select(t => Wetted(problem, t)).Distinct());
        if (problem.Preheat is { } heat)
        {
            assumptions.AddRange(heat.Assumptions);
        }

        return run with
        {
            Flow = Flow(problem, run),
            FrontShare = runner.Bench.Mesh.Geometry.SolderInBarrel ? run.FrontShare : [],
            Neighbours = [.. problem.Site.Neighbours.Select(n => Judge(n, run)), .. Body(problem.Site, run)],
            Assumptions = assumptions,
            Caveats = _caveats,
        };
    }

    private static string Wetted(JointProblem problem, Touch touch)
    {
        double radius = JointBench.ContactRadius(JointGeometry.Of(problem.Site.Joint), touch.Tip!, touch.Side);
        string limits = radius < touch.Tip!.FaceRadius.Meters ? "the pad, smaller than the tip's face" : "the tip's face, no larger than the pad";
        return string.Create(CultureInfo.InvariantCulture, $"The {touch.Tip.Name} wets a disc of {2e3 * radius:0.0#} mm: {limits}.");
    }

    private static FlowReport Flow(JointProblem problem, HeatRun run)
    {
        TemperatureHistory coldest = run.Probes[ProbeNames.ColdestSolder];
        double flow = problem.FlowTemperature.DegreesCelsius;
        return new FlowReport(
            flow,
            problem.Superheat.Kelvins,
            SinceTouch(problem, coldest.FirstAt(flow)),
            SinceTouch(problem, coldest.FirstAt(flow + problem.Superheat.Kelvins)),
            coldest.PeakCelsius);
    }

    private static double? SinceTouch(JointProblem problem, double? reached) =>
        reached - (problem.Touches.LastOrDefault(t => t.Start.Seconds <= reached + 1e-9)?.Start.Seconds ?? 0);

    private static NeighbourReport Judge(Neighbour neighbour, HeatRun run)
    {
        TemperatureHistory near = run.Probes[ProbeNames.Neighbour(neighbour.Name)];
        TemperatureHistory far = run.Probes[ProbeNames.NeighbourFarEdge(neighbour.Name)];
        double difference = 0;
        double rate = 0;
        for (int i = 0; i < near.Seconds.Length; i++)
        {
            difference = Math.Max(difference, Math.Abs(near.Celsius[i] - far.Celsius[i]));
            rate = i == 0 ? 0 : Math.Max(rate, (near.Celsius[i] - near.Celsius[i - 1]) / (near.Seconds[i] - near.Seconds[i - 1]));
        }

        List<string> warnings = [];
        Warn(warnings, near.PeakCelsius, neighbour.MostTemperature?.Low.DegreesCelsius, neighbour.MostTemperature?.Central.DegreesCelsius, neighbour.Name, "reaches", "°C");
        Warn(warnings, difference, neighbour.MostDifference?.Low.Kelvins, neighbour.MostDifference?.Central.Kelvins, neighbour.Name, "has a difference over its length of", "K");
        Warn(warnings, rate, neighbour.MostRate?.Low.DegreesCelsiusPerSecond, neighbour.MostRate?.Central.DegreesCelsiusPerSecond, neighbour.Name, "is heated at", "K/s");
        return new NeighbourReport(neighbour.Name, near.PeakCelsius, difference, rate, neighbour.MostTemperature?.Central.DegreesCelsius, warnings);
    }

    // The plastic of the part that the leg belongs to, with the one temperature that its body has.
    private static IEnumerable<NeighbourReport> Body(JointSite site, HeatRun run)
    {
        if (site.Connector is { PlasticLimit: { } limit } connector)
        {
            double peak = run.Probes[ProbeNames.Connector].PeakCelsius;
            List<string> warnings = [];
            Warn(warnings, peak, limit.Low.DegreesCelsius, limit.Central.DegreesCelsius, connector.Name, "reaches", "°C");
            yield return new NeighbourReport(connector.Name, peak, 0, 0, limit.Central.DegreesCelsius, warnings);
        }
    }

    private static void Warn(List<string> warnings, double value, double? low, double? central, string name, string verb, string unit)
    {
        if (central is { } limit && value > limit)
        {
            warnings.Add(string.Create(CultureInfo.InvariantCulture, $"{name} {verb} {value:0.#} {unit}, above its limit of {limit:0.#} {unit}"));
        }
        else if (low is { } least && value > least)
        {
            warnings.Add(string.Create(CultureInfo.InvariantCulture, $"{name} {verb} {value:0.#} {unit}, within the doubtful range of its limit ({least:0.#} to {central:0.#} {unit})"));
        }
    }
}

/// <summary>When the solder of the whole joint, barrel and fillets, was hot enough to flow.</summary>
/// <param name="FlowCelsius">Flow temperature [°C].</param>
/// <param name="SuperheatK">Superheat asked for above it [K].</param>
/// <param name="SecondsToFlow">Time from the start of the touch until the coldest solder had flow temperature, 97 % liquid [s]; null if never.</param>
/// <param name="SecondsToSuperheat">Time from the start of the touch until it had its superheat too [s]; null if never.</param>
/// <param name="ColdestPeakCelsius">Highest temperature the coldest solder reached [°C].</param>
public sealed record FlowReport(double FlowCelsius, double SuperheatK, double? SecondsToFlow, double? SecondsToSuperheat, double ColdestPeakCelsius);

/// <summary>A neighbour, or the body of the part that the joint belongs to, against its limits.</summary>
/// <param name="Name">Its name.</param>
/// <param name="PeakCelsius">Highest temperature at its near edge [°C].</param>
/// <param name="PeakDifferenceK">Largest difference over its extent [K]; zero for a body.</param>
/// <param name="PeakRateKPerS">Fastest heating of its near edge [K/s]; zero for a body.</param>
/// <param name="LimitCelsius">Highest temperature it may have [°C]; null when none is known.</param>
/// <param name="Warnings">Limits that were passed or come near within their doubtful range, one sentence each; empty when it is safe.</param>
public sealed record NeighbourReport(string Name, double PeakCelsius, double PeakDifferenceK, double PeakRateKPerS, double? LimitCelsius, IReadOnlyList<string> Warnings);
