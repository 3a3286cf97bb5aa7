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
        return Sentence(work, stations, $"the refit with {work.Request.Refill.Name}", needed);
    }

    /// <summary>Why no first pass holds the limits.</summary>
    internal static string OfFirst(Workload work, MixOptions mixes, IReadOnlyList<Station> stations)
    {
        MixOption lowest = mixes.Diluted.Prepend(mixes.AsIs).MinBy(m => m.FlowC)!;
        return Sentence(work, stations, lowest.Alloy is null ? "the joint's own solder" : $"the lowest-flowing mix, {lowest.Added.Milligrams.ToString("0.0", CultureInfo.InvariantCulture)} mg of {lowest.Name}", work.NeededC(lowest.FlowC));
    }

    /// <summary>Why plans of the simple kinds are missing: nothing added, no preheat, both.</summary>
    internal static IEnumerable<RuledOut> OfKinds(Workload work, MixOptions mixes, IReadOnlyList<Station> stations, IReadOnlyList<Plan> plans)
    {
        double own = work.NeededC(mixes.AsIs.FlowC);
        List<Station> cold = [.. stations.Where(s => s.Setting.Preheat is null)];
        if (!plans.Any(p => p.Alloy is null && p.First.Setting.Preheat is null))
        {
            yield return new RuledOut("nothing added, no preheat", Sentence(work, cold, work.Request.BaseSolder.Name, own));
        }

        if (!plans.Any(p => p.Alloy is null))
        {
            yield return new RuledOut("nothing added", Sentence(work, stations, work.Request.BaseSolder.Name, own));
        }

        if (!plans.Any(p => p.First.Setting.Preheat is null) && cold.TrueForAll(s => s.Refit is null))
        {
            double refit = work.NeededC(RefillFlowC(work, stations, mixes));
            yield return new RuledOut("no preheat", Sentence(work, cold, $"the refit with {work.Request.Refill.Name}", refit));
        }
    }

    private static double RefillFlowC(Workload work, IReadOnlyList<Station> stations, MixOptions mixes) =>
        stations.Select(s => s.Bare.Run.Flow?.FlowCelsius).OfType<double>().DefaultIfEmpty(mixes.AsIs.FlowC).First();

    private static string Sentence(Workload work, IReadOnlyList<Station> stations, string what, double neededC)
    {
        Station best = stations.MaxBy(s => s.Bare.ColdestPeakC)!;
        (double stop, StopReason reason) = TouchJudge.Stop(best.Bare, work.Limits, double.PositiveInfinity);
        double longest = work.Limits.MostDwell.Value.Seconds;
        string board = best.Setting.Preheat is null
            ? "without preheat"
            : string.Create(CultureInfo.InvariantCulture, $"with the board at {best.Bare.BoardStartC:0} °C");
        double short_ = neededC - best.Bare.ColdestPeakC;
        string place = string.Create(
            CultureInfo.InvariantCulture,
            $"{what}: the coldest solder reaches at most {best.Bare.ColdestPeakC:0} °C in {longest:0.#} s ({best.Setting.Iron.Name} at {best.Setting.Set.DegreesCelsius:0} °C, {board})");
        if (short_ > 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{place}; it needs {neededC:0} °C, {short_:0} K more");
        }

        return reason == StopReason.PadTemperature
            ? string.Create(CultureInfo.InvariantCulture, $"{place}, but the pad reaches its limit of {work.Limits.MostPadTemperature.Value.DegreesCelsius:0} °C after {stop:0.0} s, before the solder has flowed and been worked")
            : string.Create(CultureInfo.InvariantCulture, $"{place}, but not soon enough to work it within the longest touch and the heat budget");
    }
}
