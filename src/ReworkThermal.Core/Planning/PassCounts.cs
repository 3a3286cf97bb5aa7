using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;

namespace ReworkThermal.Core.Planning;

/// <summary>
/// Passes that each mix needs before its leftovers cannot hurt. More of an alloy never needs fewer passes, so between two amounts that
/// need the same number nothing has to be computed.
/// </summary>
internal sealed class PassCounts
{
    private readonly Dictionary<MixOption, int> _counts;

    private PassCounts(Dictionary<MixOption, int> counts) => _counts = counts;

    /// <summary>Counts the passes of all mixes; alloys in parallel.</summary>
    internal static PassCounts Make(PhaseEngine engine, Workload work, MixOptions mixes, CancellationToken cancellation)
    {
        List<List<MixOption>> alloys = [.. mixes.Diluted.Prepend(mixes.AsIs).GroupBy(m => m.Name).Select(g => g.OrderBy(m => m.Added).ToList())];
        int[][] counts = [.. alloys.Select(a => new int[a.Count])];
        Parallel.For(0, alloys.Count, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            Count(engine, work, alloys[i], counts[i], 0);
            Count(engine, work, alloys[i], counts[i], counts[i].Length - 1);
            Between(engine, work, alloys[i], counts[i], 0, counts[i].Length - 1);
        });
        return new PassCounts(alloys.SelectMany(a => a).Zip(counts.SelectMany(c => c)).ToDictionary(p => p.First, p => p.Second));
    }

    /// <summary>Passes of a mix; null when the most passes allowed are not enough.</summary>
    internal int? Of(MixOption mix) => _counts[mix] is var count and > 0 ? count : null;

    private static void Between(PhaseEngine engine, Workload work, List<MixOption> mixes, int[] counts, int from, int to)
    {
        if (to - from < 2)
        {
            return;
        }

        if (counts[from] == counts[to])
        {
            Array.Fill(counts, counts[from], from + 1, to - from - 1);
            return;
        }

        int middle = (from + to) / 2;
        Count(engine, work, mixes, counts, middle);
        Between(engine, work, mixes, counts, from, middle);
        Between(engine, work, mixes, counts, middle, to);
    }

    private static void Count(PhaseEngine engine, Workload work, List<MixOption> mixes, int[] counts, int index)
    {
        if (counts[index] == 0)
        {
            counts[index] = new CleaningSearch(engine).FewestPasses(JobHeat.Question(work, mixes[index]), JobHeat.EstimatePasses(work, mixes[index]))?.Passes ?? -1;
        }
    }
}
