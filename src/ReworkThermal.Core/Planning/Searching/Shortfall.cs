using System.Globalization;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Touches;

namespace ReworkThermal.Core.Planning.Searching;

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
    /// <param name="work">What is asked.</param>
    /// <param name="mixes">The mixes.</param>
    /// <param name="stations">Every tool setting.</param>
    /// <param name="plans">The plans that are shown.</param>
    /// <param name="simplest">The best plan with nothing added and no preheat, shown or not; null when none holds the limits.</param>
    /// <param name="stuck">Where braid holds the joint's own solder back; null when it does not.</param>
    internal static IEnumerable<RuledOut> OfKinds(Workload work, MixOptions mixes, IReadOnlyList<Station> stations, IReadOnlyList<Plan> plans, Plan? simplest, Confirmation.StuckBraid? stuck)
    {
        double own = work.NeededC(mixes.AsIs.FlowC);
        stuck = plans.Any(p => p.Alloy is null) ? null : stuck;
        List<Station> cold = [.. stations.Where(s => s.Setting.Preheat is null)];
        if (!plans.Any(p => p.Alloy is null && p.First.Setting.Preheat is null))
        {
            yield return new RuledOut("nothing added, no preheat", simplest is null
                ? Sentence(work, cold, work.Request.BaseSolder.Name, own, stuck is null ? stations : cold, c => LeastAmount(mixes, c))
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"would work ({simplest.First.Setting.OnTheJoint}), but uses {simplest.LaminateShare.Central * 100:0.00} % of the time to delamination; plan 1 uses {plans[0].LaminateShare.Central * 100:0.00} %"));
        }

        if (!plans.Any(p => p.Alloy is null))
        {
            yield return new RuledOut("nothing added", stuck is null
                ? Sentence(work, stations, work.Request.BaseSolder.Name, own, stations, c => LeastAmount(mixes, c))
                : OfBraid(stuck));
        }

        if (!plans.Any(p => p.First.Setting.Preheat is null) && cold.TrueForAll(s => s.Refit is null))
        {
            double refit = work.NeededC(RefillFlowC(work, stations, mixes));
            yield return new RuledOut("no preheat", Sentence(work, cold, $"the refit with {work.Request.Refill.Name}", refit, stations, OtherRefill));
        }
    }

    /// <summary>Why no plan works with hot air alone, when there is a nozzle at hand.</summary>
    internal static IEnumerable<RuledOut> OfAir(Workload work, MixOptions mixes, IReadOnlyList<Station> stations, IReadOnlyList<Plan> plans)
    {
        if (work.Request.Bench.Air.Count == 0 || plans.Any(p => p.First.Setting.Air is not null))
        {
            yield break;
        }

        List<Station> air = [.. stations.Where(s => s.Setting.Air is not null)];
        MixOption lowest = mixes.Diluted.Prepend(mixes.AsIs).MinBy(m => m.FlowC)!;
        yield return new RuledOut("hot air alone", air switch
        {
            [] => "no temperature that is tried suits the nozzle at this flow and distance",
            _ when air.Exists(s => TouchJudge.Judge(s.Bare, s.Setting, work.NeededC(lowest.FlowC), work.Limits, work.LongestWith(s.Setting), double.PositiveInfinity) is not null)
                => "would do for some mixes, but no plan with it is better than one with an iron",
            _ => Sentence(work, air, lowest.Name, work.NeededC(lowest.FlowC), stations, _ => null),
        });
    }

    /// <summary>Why no plan works with an iron that hot air helps, when both are at hand.</summary>
    internal static IEnumerable<RuledOut> OfAssist(Workload work, MixOptions mixes, AssistedStations assisted, IReadOnlyList<Station> stations, IReadOnlyList<Plan> plans)
    {
        if (work.Request.Bench.Air.Count == 0 || plans.Any(p => p.First.Setting.Assist is not null || p.Refit.Setting.Assist is not null))
        {
            yield break;
        }

        MixOption lowest = mixes.Diluted.Prepend(mixes.AsIs).MinBy(m => m.FlowC)!;
        yield return new RuledOut("iron and hot air", assisted switch
        {
            { Nearest: var (alone, end) } => string.Create(
                CultureInfo.InvariantCulture,
                $"{alone.OnTheJoint}, {Board(alone, alone.Preheat?.Board.DegreesCelsius)}, must stop after {Math.Max(0, end.Seconds):0.0} s: {LimitOf(work, alone, end)}; {work.Limits.AirLead.Value.Seconds:0.#} s before the iron touches (air_lead) and {work.Limits.WorkingTime.Value.Seconds:0.#} s to work are wanted"),
            { Stations: [] } => string.Create(
                CultureInfo.InvariantCulture,
                $"air that leaves time for an iron either melts everything alone within {work.Limits.AirLead.Value.Seconds:0.#} s (air_lead), or no iron at hand gets through even with it"),
            _ when assisted.Stations.Any(s => TouchJudge.Judge(s.Bare, s.Setting, work.NeededC(lowest.FlowC), work.Limits, work.LongestWith(s.Setting), double.PositiveInfinity) is not null)
                => "would do for some mixes, but no plan with both is better than one with a single tool",
            _ => Sentence(work, assisted.Stations, lowest.Name, work.NeededC(lowest.FlowC), stations, _ => null),
        });
    }

    /// <summary>Why there is no plan for the sake of the braid between tip and joint.</summary>
    internal static string OfBraid(Confirmation.StuckBraid stuck) => string.Create(
        CultureInfo.InvariantCulture,
        $"the braid would stick: through it the coldest solder reaches at best {stuck.ReachedC:0} °C ({stuck.Setting.OnTheJoint}, {Board(stuck.Setting, stuck.Setting.Preheat?.Board.DegreesCelsius)}), {stuck.MissingK:0.#} K too little; take the solder out with a pump or a vacuum tool, or add an alloy that flows lower");

    /// <summary>Why there is no plan for the sake of the pad.</summary>
    /// <param name="work">What is asked.</param>
    /// <param name="melts">Fewest melts that a job takes.</param>
    /// <param name="after">What they leave of the pad's heat budget.</param>
    internal static string OfPad(Workload work, int melts, HeatBudget after) => string.Create(
        CultureInfo.InvariantCulture,
        $"{PastBudget(work, melts, after)}: count the pad as lost and plan a wire, or allow more (most_budget_after) and expect to lose it");

    /// <summary>Alloys no mix of which is a candidate although it could be cleaned out: the pad bears too few melts for it, or what little of it the pad bears does not flow.</summary>
    internal static IEnumerable<RuledOut> OfMixes(Workload work, MixOptions mixes, PassCounts counts, CandidateList candidates, IReadOnlyList<Station> stations)
    {
        foreach (IGrouping<string, MixOption> alloy in mixes.Diluted.Where(m => counts.Of(m) is not null).GroupBy(m => m.Name).Where(g => !candidates.Has(g.Key)))
        {
            int fewest = alloy.Min(m => counts.Of(m)!.Value) + 1;
            MixOption? lowest = alloy.Where(m => work.Allows(work.BudgetAfterMelts(counts.Of(m)!.Value + 1))).MinBy(m => m.FlowC);
            yield return new RuledOut(alloy.Key, lowest is null
                ? PastBudget(work, fewest, work.BudgetAfterMelts(fewest))
                : Sentence(
                    work,
                    stations,
                    string.Create(CultureInfo.InvariantCulture, $"{lowest.Added.Milligrams:0.0} mg, the lowest-flowing mix that the pad bears the {counts.Of(lowest)} passes of"),
                    work.NeededC(lowest.FlowC),
                    stations,
                    _ => null));
        }
    }

    private static string PastBudget(Workload work, int melts, HeatBudget after) => string.Create(
        CultureInfo.InvariantCulture,
        $"{melts} melts, the fewest, bring the pad's heat budget from {work.Damage.Budget(work.PadBefore).Share.Central * 100:0} % to at least {after.Share.Central * 100:0} %, and {work.Limits.MostBudgetAfter.Value.Percent:0} % is the most allowed ({after.Reason})");

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
        string board = Board(best.Station.Setting, best.Station.Bare.BoardStartC);
        string limit = LimitOf(work, best.Station.Setting, best.End);
        string reach = string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: the coldest solder reaches at best {best.Celsius:0} °C after {best.Seconds:0.0} s ({best.Station.Setting.OnTheJoint}, {board}), and {(best.End.Reason == StopReason.LongestTouch ? limit : "then " + limit)}");
        double missing = neededC - best.Celsius;
        return missing > 0
            ? string.Create(CultureInfo.InvariantCulture, $"{reach}; it needs {neededC:0} °C, {missing:0.#} K more{Remedies(work, all, best, neededC, other(best.Celsius - work.Limits.Superheat.Value.Kelvins))}")
            : string.Create(CultureInfo.InvariantCulture, $"{reach}; that would do without the solder's own heat of melting, but not with it{Remedies(work, all, best, neededC, other(best.Celsius - work.Limits.Superheat.Value.Kelvins))}");
    }

    private static string Board(ToolSetting setting, double? boardC) => setting.Preheat is null
        ? "without preheat"
        : string.Create(CultureInfo.InvariantCulture, $"with the board at {boardC:0} °C");

    private static string LimitOf(Workload work, ToolSetting setting, TouchEnd end) => end.Reason switch
    {
        StopReason.LongestTouch => string.Create(CultureInfo.InvariantCulture, $"the longest touch is {work.LongestWith(setting).Seconds:0.#} s"),
        StopReason.PadTemperature => string.Create(CultureInfo.InvariantCulture, $"the pad nears its limit of {work.Limits.MostPadTemperature.Value.DegreesCelsius:0} °C"),
        StopReason.HeatBudget => "the heat budget is spent",
        StopReason.Neighbour => string.Create(CultureInfo.InvariantCulture, $"{end.Part!.Name} nears its limit of {end.Part.MostTemperature!.Central.DegreesCelsius:0} °C"),
        _ => throw new InvalidOperationException("unknown stop reason"),
    };

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
        if (hotter.Where(r => r.Celsius >= neededC && IsInTime(work, r, neededC)).MinBy(r => r.Station.Bare.BoardStartC) is { } enough)
        {
            double more = Math.Ceiling(enough.Station.Bare.BoardStartC - board);
            return string.Create(CultureInfo.InvariantCulture, $"preheat the board by about {more:0} K more, with the {enough.Station.Setting.OnTheJoint}");
        }

        // The solder would get there if a part beside it could bear the touch.
        if (hotter.FirstOrDefault(r => r.End.Part is not null && r.Station.Bare.ColdestAt(best.Seconds) >= neededC)?.End.Part is { } part)
        {
            return $"shield {part.Name}, which reaches its limit first over a hotter board";
        }

        double share = Math.Clamp((best.Celsius - board) / (best.Station.Setting.Set.DegreesCelsius - board), 0, 0.95);
        double least = (neededC - best.Celsius) / (1 - share);
        return least > 0 && board + least <= work.Limits.MostPreheat.Value.DegreesCelsius && work.Request.Bench.Preheaters.Count == 0
            ? string.Create(CultureInfo.InvariantCulture, $"preheat the board by at least {Math.Ceiling(least):0} K")
            : null;
    }

    // With the solder's own heat of melting, as far as the refill's delay tells it.
    private static bool IsInTime(Workload work, Reach reach, double neededC) =>
        reach.Station is { Delay: { } delay } station
        && station.Bare.SecondsUntilColdest(neededC) is { } bare
        && (delay * bare) + work.Limits.WorkingTime.Value.Seconds <= reach.End.Seconds;

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
