using System.Globalization;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Touches;

namespace ReworkThermal.Core.Planning.Searching;

/// <summary>Every mix at every tool setting that could hold the limits, with what the job would take at least.</summary>
internal sealed class CandidateList
{
    // The delay of one alloy is only about that of another: a candidate is dropped unrun when it would miss its stop by more than this.
    private const double Doubt = 0.7;

    private readonly List<Candidate> _all;
    private readonly Workload _work;

    private CandidateList(List<Candidate> all, Workload work)
    {
        _all = all;
        _work = work;
    }

    /// <summary>Makes the list from the runs of every station; what takes more melts than the pad's heat budget bears is not in it.</summary>
    internal static CandidateList Make(Workload work, MixOptions mixes, PassCounts counts, IReadOnlyList<Station> stations, double laminatePerTouch)
    {
        List<Candidate> candidates = [];

        // Where even the refill alloy does not flow, a mix is delayed at least as much as anywhere else.
        double greatest = stations.Select(s => s.Delay).OfType<double>().DefaultIfEmpty(1).Max();
        HashSet<int> bearable = [.. Enumerable.Range(1, work.Limits.MostPasses.Value).Where(n => work.Allows(work.BudgetAfterMelts(n + 1)))];
        foreach (MixOption mix in mixes.Diluted.Prepend(mixes.AsIs))
        {
            if (counts.Of(mix) is not { } passes || !bearable.Contains(passes))
            {
                continue;
            }

            foreach (Station station in stations)
            {
                TouchPlan? first = TouchJudge.Judge(
                    station.Bare, station.Setting, work.NeededC(mix.FlowC), work.Limits, work.LongestWith(station.Setting), laminatePerTouch);
                if (first is null || RefitFor(station, stations) is not { } refit)
                {
                    continue;
                }

                double dwell = ((station.Delay ?? greatest) * (first.Dwell - work.Limits.WorkingTime.Value).Seconds) + work.Limits.WorkingTime.Value.Seconds;
                if (dwell * Doubt > first.Stop.Seconds)
                {
                    continue;
                }

                JobCost least = new(first.LaminateShare + (passes * refit.LaminateShare), passes + 1, mix.Added.Kilograms, first.TightnessWith(work.Limits.WorkingTime.Value), station.Setting.Assist is not null);
                JobCost likely = least with
                {
                    Laminate = station.Bare.LaminateAt(dwell) + (passes * refit.LaminateShare),
                    Tightness = least.Tightness * (station.Delay ?? greatest),
                };
                candidates.Add(new Candidate(mix, station with { Refit = refit }, least, likely));
            }
        }

        return new CandidateList(candidates, work);
    }

    /// <summary>Candidates of a kind, most promising first.</summary>
    internal IReadOnlyList<Candidate> For(PlanKind kind) =>
    [
        .. _all.Where(c => Fits(c, kind))
            .OrderBy(c => c.Likely.RankFor(kind, _work.Damage, _work.PadBefore))
            .ThenBy(c => c.Likely.Laminate)
            .ThenBy(c => c.Station.Setting.Set.Kelvins)
            .ThenBy(c => c.Mix.Name, StringComparer.Ordinal),
    ];

    /// <summary>Whether any mix with an alloy is a candidate.</summary>
    internal bool Has(string alloy) => _all.Exists(c => c.Mix.Name == alloy);

    /// <summary>Alloys that no plan uses, each with what its best candidate would take at least.</summary>
    internal IEnumerable<RuledOut> Beaten(IReadOnlyList<Plan> plans)
    {
        HashSet<string> used = [.. plans.Select(p => p.Alloy?.Name ?? string.Empty)];
        foreach (IGrouping<string, Candidate> alloy in For(PlanKind.OtherAlloy).GroupBy(c => c.Mix.Name))
        {
            if (!used.Contains(alloy.Key) && plans.Count > 0)
            {
                yield return new RuledOut(alloy.Key, WhyBeaten(alloy.First(), plans[0]));
            }
        }
    }

    // The candidate's figures are its likely ones, from the runs without heat of melting and the refill's delay.
    private static string WhyBeaten(Candidate best, Plan winner)
    {
        string flows = string.Create(CultureInfo.InvariantCulture, $"would work ({best.Mix.Added.Milligrams:0.0} mg, flows at {best.Mix.FlowC:0} °C)");
        int passes = best.Likely.Melts - 1;
        string against = winner.Alloy?.Name ?? "nothing added";
        if (passes != winner.Passes)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{flows}, but takes {passes} passes to clean out; {against} takes {winner.Passes}");
        }

        return string.Create(
            CultureInfo.InvariantCulture,
            $"{flows}, but uses about {best.Likely.Laminate * 100:0.00} % of the time to delamination; {against} uses {winner.LaminateShare.Central * 100:0.00} %");
    }

    private static bool Fits(Candidate candidate, PlanKind kind) => kind switch
    {
        PlanKind.NoLead => candidate.Mix.Alloy is null or { IsLeadFree: true },
        PlanKind.NoPreheat => candidate.Station.Setting.Preheat is null,
        PlanKind.NothingAdded => candidate.Mix.Alloy is null,
        PlanKind.OtherAlloy => candidate.Mix.Alloy is not null,
        _ => true,
    };

    /// <summary>
    /// The refit of the least heat with the same heat from below: the iron may be changed between touches, the board stays where it is.
    /// </summary>
    private static TouchPlan? RefitFor(Station station, IReadOnlyList<Station> stations) => stations
        .Where(s => s.Setting.Preheat == station.Setting.Preheat)
        .Select(s => s.Refit)
        .OfType<TouchPlan>()
        .MinBy(r => r.LaminateShare);
}

/// <summary>A mix at a tool setting, judged by a run without heat of melting: never slower than the real one.</summary>
/// <param name="Mix">The mix.</param>
/// <param name="Station">The tool setting with its runs.</param>
/// <param name="Least">What the job takes at least: without heat of melting.</param>
/// <param name="Likely">What it probably takes: with the delay that the refill alloy's heat of melting makes at the same setting.</param>
internal sealed record Candidate(MixOption Mix, Station Station, JobCost Least, JobCost Likely);

/// <summary>What a simulated touch is for, which sets how finely it is computed.</summary>
internal enum RunPurpose
{
    /// <summary>To sort out settings; whatever is chosen is run again.</summary>
    Screening,

    /// <summary>To stand in a plan.</summary>
    Plan,
}
