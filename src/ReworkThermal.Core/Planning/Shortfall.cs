using System.Globalization;
using ReworkThermal.Core.Phases;

namespace ReworkThermal.Core.Planning;

/// <summary>Says which limit blocks, and by how much.</summary>
internal static class Shortfall
{
    /// <summary>Why no refit holds the limits.</summary>
    internal static string OfRefit(Workload work, IReadOnlyList<Station> stations, MeltingBehaviour refill)
    {
        double needed = work.NeededC(refill.Flow.DegreesCelsius);
        return Sentence(work, stations, $"the refit with {work.Request.Refill.Name}", needed, stations, OtherRefill);
    }

    /// <summary>Why no first pass holds the limits.</summary>
    internal static string OfFirst(Workload work, MixOptions mixes, IReadOnlyList<Station> stations)
    {
        MixOption lowest = mixes.Diluted.Prepend(mixes.AsIs).MinBy(m => m.FlowC)!;
        return Sentence(work, stations, lowest.Alloy is null ? "the joint's own solder" : $"the lowest-flowing mix, {lowest.Added.Milligrams.ToString("0.0", CultureInfo.InvariantCulture)} mg of {lowest.Name}", work.NeededC(lowest.FlowC), stations, OtherMix);
    }

    /// <summary>Why plans of the simple kinds are missing: nothing added, no preheat, both.</summary>
    internal static IEnumerable<RuledOut> OfKinds(Workload work, MixOptions mixes, IReadOnlyList<Station> stations, IReadOnlyList<Plan> plans)
    {
        double own = work.NeededC(mixes.AsIs.FlowC);
        List<Station> cold = [.. stations.Where(s => s.Setting.Preheat is null)];
        if (!plans.Any(p => p.Alloy is null && p.First.Setting.Preheat is null))
        {
            yield return new RuledOut("nothing added, no preheat", Sentence(work, cold, work.Request.BaseSolder.Name, own, stations, c => LeastAmount(mixes, c)));
        }

        if (!plans.Any(p => p.Alloy is null))
        {
            yield return new RuledOut("nothing added", Sentence(work, stations, work.Request.BaseSolder.Name, own, stations, c => LeastAmount(mixes, c)));
        }

        if (!plans.Any(p => p.First.Setting.Preheat is null) && cold.TrueForAll(s => s.Refit is null))
        {
            double refit = work.NeededC(RefillFlowC(work, stations, mixes));
            yield return new RuledOut("no preheat", Sentence(work, cold, $"the refit with {work.Request.Refill.Name}", refit, stations, OtherRefill));
        }
    }

    /// <summary>Why no plan works with hot air, when there is a nozzle at hand.</summary>
    internal static IEnumerable<RuledOut> OfAir(Workload work, MixOptions mixes, IReadOnlyList<Station> stations, IReadOnlyList<Plan> plans)
    {
        if (work.Request.Bench.Air.Count == 0 || plans.Any(p => p.First.Setting.Air is not null))
        {
            yield break;
        }

        List<Station> air = [.. stations.Where(s => s.Setting.Air is not null)];
        MixOption lowest = mixes.Diluted.Prepend(mixes.AsIs).MinBy(m => m.FlowC)!;
        yield return new RuledOut("hot air", air switch
        {
            [] => "it is tried with heat from below only, and there is none",
            _ when air.Exists(s => TouchJudge.Judge(s.Bare, s.Setting, work.NeededC(lowest.FlowC), work.Limits, work.LongestWith(s.Setting), double.PositiveInfinity) is not null)
                => "would do for some mixes, but no plan with it is better than one with an iron",
            _ => Sentence(work, air, lowest.Name, work.NeededC(lowest.FlowC), stations, _ => null),
        });
    }

    /// <summary>Alloys that no amount of which can be cleaned out in the passes allowed.</summary>
    internal static IEnumerable<RuledOut> OfCleaning(Workload work, MixOptions mixes, PassCounts counts) => mixes.Diluted
        .GroupBy(m => m.Name)
        .Where(g => g.All(m => counts.Of(m) is null))
        .Select(g => new RuledOut(g.Key, string.Create(
            CultureInfo.InvariantCulture,
            $"not clean after {work.Limits.MostPasses.Value} passes, the most allowed: more than 0.1 % of the final joint would still melt low")));

    private static double RefillFlowC(Workload work, IReadOnlyList<Station> stations, MixOptions mixes) =>
        stations.Select(s => s.Bare.Run.Flow?.FlowCelsius).OfType<double>().DefaultIfEmpty(mixes.AsIs.FlowC).First();

    private static string Sentence(Workload work, IReadOnlyList<Station> stations, string what, double neededC, IReadOnlyList<Station> all, Func<double, string?> other)
    {
        Reach best = stations.Select(s => ReachOf(work, s)).MaxBy(r => r.Celsius)!;
        string board = best.Station.Setting.Preheat is null
            ? "without preheat"
            : string.Create(CultureInfo.InvariantCulture, $"with the board at {best.Station.Bare.BoardStartC:0} °C");
        string limit = best.End.Reason switch
        {
            StopReason.LongestTouch => string.Create(CultureInfo.InvariantCulture, $"the longest touch is {work.LongestWith(best.Station.Setting).Seconds:0.#} s"),
            StopReason.PadTemperature => string.Create(CultureInfo.InvariantCulture, $"then the pad nears its limit of {work.Limits.MostPadTemperature.Value.DegreesCelsius:0} °C"),
            StopReason.HeatBudget => "then the heat budget is spent",
            StopReason.Neighbour => string.Create(CultureInfo.InvariantCulture, $"then {best.End.Part!.Name} nears its limit of {best.End.Part.MostTemperature!.Central.DegreesCelsius:0} °C"),
            _ => throw new InvalidOperationException("unknown stop reason"),
        };
        string reach = string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: the coldest solder reaches at best {best.Celsius:0} °C after {best.Seconds:0.0} s ({best.Station.Setting.ToolName} at {best.Station.Setting.Set.DegreesCelsius:0} °C, {board}), and {limit}");
        double missing = neededC - best.Celsius;
        return missing > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{reach}; it needs {neededC:0} °C, {missing:0.#} K more{Remedies(work, all, best, neededC, other(best.Celsius - work.Limits.Superheat.Value.Kelvins))}")
            : string.Create(CultureInfo.InvariantCulture, $"{reach}; that would do without the solder's own heat of melting, but not with it");
    }

    /// <summary>What would close the gap: more heat from below, or another solder.</summary>
    private static string Remedies(Workload work, IReadOnlyList<Station> all, Reach best, double neededC, string? other)
    {
        string? preheat = best.End.Part is null ? MorePreheat(work, all, best, neededC) : null;
        string[] remedies = [.. new[] { preheat, other }.OfType<string>()];
        return remedies.Length > 0 ? ": " + string.Join(", or ", remedies) : string.Empty;
    }

    /// <summary>
    /// How much hotter the board must be: the coolest hotter board that was tried and over which a tool gets the solder there within the
    /// limits. Where no preheater is at hand, heat flow is nearly linear: with a share s of the way from board to tip behind it, the coldest
    /// solder rises by 1 - s for each kelvin of the board, and by less where a connector stays cool.
    /// </summary>
    private static string? MorePreheat(Workload work, IReadOnlyList<Station> all, Reach best, double neededC)
    {
        double board = best.Station.Bare.BoardStartC;
        Reach[] hotter = [.. all.Where(s => s.Bare.BoardStartC > board).Select(s => ReachOf(work, s))];
        if (hotter.Where(r => r.Celsius >= neededC).MinBy(r => r.Station.Bare.BoardStartC) is { } enough)
        {
            double more = Math.Ceiling(enough.Station.Bare.BoardStartC - board);
            return string.Create(CultureInfo.InvariantCulture, $"preheat the board by about {more:0} K more, with the {enough.Station.Setting.ToolName} at {enough.Station.Setting.Set.DegreesCelsius:0} °C");
        }

        // The solder would get there if a part beside it could bear the touch.
        if (hotter.FirstOrDefault(r => r.End.Part is not null && r.Station.Bare.ColdestAt(best.Seconds) >= neededC)?.End.Part is { } part)
        {
            return $"shield {part.Name}, which reaches its limit first over a hotter board";
        }

        double share = Math.Clamp((best.Celsius - board) / (best.Station.Setting.Set.DegreesCelsius - board), 0, 0.95);
        double least = (neededC - best.Celsius) / (1 - share);
        return board + least <= work.Limits.MostPreheat.Value.DegreesCelsius && work.Request.Bench.Preheaters.Count == 0
            ? string.Create(CultureInfo.InvariantCulture, $"preheat the board by at least {Math.Ceiling(least):0} K")
            : null;
    }

    private static string? OtherRefill(double flowC) => string.Create(CultureInfo.InvariantCulture, $"refit with a solder that flows at {flowC:0} °C or below");

    private static string? OtherMix(double flowC) => string.Create(CultureInfo.InvariantCulture, $"add an alloy whose mix flows at {flowC:0} °C or below");

    private static string? LeastAmount(MixOptions mixes, double flowC) => mixes.Diluted.Where(m => m.FlowC <= flowC).MinBy(m => m.Added) is { } mix
        ? string.Create(CultureInfo.InvariantCulture, $"add {mix.Added.Milligrams:0.0} mg of {mix.Name}")
        : null;

    /// <summary>How hot the coldest solder gets at a station while there is still time to work it.</summary>
    private static Reach ReachOf(Workload work, Station station)
    {
        TouchEnd end = TouchJudge.Stop(station.Bare, work.Limits, work.LongestWith(station.Setting), double.PositiveInfinity);
        double seconds = Math.Max(0, end.Seconds - work.Limits.WorkingTime.Value.Seconds);
        return new Reach(station, station.Bare.ColdestAt(seconds), seconds, end);
    }

    private sealed record Reach(Station Station, double Celsius, double Seconds, TouchEnd End);
}
