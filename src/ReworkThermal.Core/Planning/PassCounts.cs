using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;

namespace ReworkThermal.Core.Planning;

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

    private static int[] Count(CleaningSearch cleaning, Workload work, List<MixOption> mixes)
    {
        double clean = -1;
        double dirty = double.PositiveInfinity;
        int most = work.Limits.MostPasses.Value;
        int[] counts = new int[mixes.Count];
        for (int i = 0; i < counts.Length; i++)
        {
            // Fewest passes by bisection; what an earlier amount has shown about a share of leftovers is not computed again.
            int low = 0;
            int high = most + 1;
            while (high - low > 1)
            {
                int passes = (low + high) / 2;
                double share = JobHeat.ResidueShare(work, mixes[i], passes);
                bool isClean = share <= clean || (share < dirty && cleaning.After(JobHeat.Question(work, mixes[i]), passes) is { IsClean: true });
                (low, high) = isClean ? (low, passes) : (passes, high);
                (clean, dirty) = isClean ? (Math.Max(clean, share), dirty) : (clean, Math.Min(dirty, share));
            }

            counts[i] = high > most ? -1 : high;
        }

        return counts;
    }
}
