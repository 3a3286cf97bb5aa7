using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Pads;

namespace ReworkThermal.Core.Planning.Searching;

/// <summary>
/// Passes that each mix needs before its leftovers cannot hurt. What counts is the share of the added alloy that is left in the final
/// joint: less than a share that was clean is clean, more than one that was not is not, so most shares need no computation.
/// </summary>
internal sealed class PassCounts
{
    private readonly Dictionary<MixOption, int> _counts;

    private PassCounts(Dictionary<MixOption, int> counts) => _counts = counts;

    /// <summary>Counts the passes of all mixes; alloys in parallel.</summary>
    internal static PassCounts Make(PhaseEngine engine, Workload work, MixOptions mixes, CancellationToken cancellation)
    {
        List<List<MixOption>> alloys = [.. mixes.Diluted.Prepend(mixes.AsIs).GroupBy(m => m.Name).Select(g => g.OrderByDescending(m => m.Added).ToList())];
        int[][] counts = new int[alloys.Count][];
        Parallel.For(0, alloys.Count, new ParallelOptions { CancellationToken = cancellation }, i => counts[i] = Count(new CleaningSearch(engine), work, alloys[i]));
        return new PassCounts(alloys.SelectMany(a => a).Zip(counts.SelectMany(c => c)).ToDictionary(p => p.First, p => p.Second));
    }

    /// <summary>Passes of a mix; null when the most passes allowed are not enough.</summary>
    internal int? Of(MixOption mix) => _counts[mix] is var count and > 0 ? count : null;

    // The greatest share of leftovers that is clean, by bisection over all shares that a mix and a number of passes can leave.
    private static int[] Count(CleaningSearch cleaning, Workload work, List<MixOption> mixes)
    {
        int most = work.Limits.MostPasses.Value;
        List<(double Share, MixOption Mix, int Passes)> leftovers =
        [
            .. mixes.SelectMany(m => Enumerable.Range(1, most).Select(n => (Share: JobHeat.ResidueShare(work, m, n), Mix: m, Passes: n))).OrderBy(l => l.Share),
        ];
        int clean = -1;
        int dirty = leftovers.Count;
        while (dirty - clean > 1)
        {
            int middle = (clean + dirty) / 2;
            (clean, dirty) = cleaning.IsCleanAfter(JobHeat.Question(work, leftovers[middle].Mix), leftovers[middle].Passes) ? (middle, dirty) : (clean, middle);
        }

        double mostLeft = clean < 0 ? double.NegativeInfinity : leftovers[clean].Share;
        return [.. mixes.Select(m => Enumerable.Range(1, most).FirstOrDefault(n => JobHeat.ResidueShare(work, m, n) <= mostLeft, -1))];
    }
}
