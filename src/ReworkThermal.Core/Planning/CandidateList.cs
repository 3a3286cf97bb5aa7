using System.Globalization;

namespace ReworkThermal.Core.Planning;

/// <summary>Every mix at every tool setting that could hold the limits, in order of the heat it would take at least.</summary>
internal sealed class CandidateList
{
    private readonly List<Candidate> _byHeat;

    private CandidateList(List<Candidate> byHeat) => _byHeat = byHeat;

    /// <summary>Makes the list from the bounds of every station.</summary>
    internal static CandidateList Make(Workload work, MixOptions mixes, IReadOnlyList<Station> stations, double laminatePerTouch)
    {
        double lossPerMelt = work.Damage.Parameters.Adhesion.LossPerMelt.Central;
        List<Candidate> candidates = [];
        foreach (MixOption mix in mixes.Diluted.Prepend(mixes.AsIs))
        {
            int passes = JobHeat.EstimatePasses(work, mix);
            foreach (Station station in stations)
            {
                TouchPlan? first = TouchJudge.Judge(station.Bare, station.Setting, work.NeededC(mix.FlowC), work.Limits, laminatePerTouch);
                if (first is null || RefitFor(station, stations) is not { } refit)
                {
                    continue;
                }

                double laminate = first.LaminateShare + (passes * refit.LaminateShare);
                candidates.Add(new Candidate(mix, station with { Refit = refit }, passes, JobHeat.AdhesionLost(laminate, passes + 1, lossPerMelt)));
            }
        }

        return new CandidateList([.. candidates
            .OrderBy(c => c.Objective)
            .ThenBy(c => c.Mix.Added.Kilograms)
            .ThenBy(c => c.Station.Setting.Set.Kelvins)
            .ThenBy(c => c.Mix.Name, StringComparer.Ordinal)]);
    }

    /// <summary>Candidates of a kind, most promising first.</summary>
    internal IReadOnlyList<Candidate> For(PlanKind kind) => kind switch
    {
        PlanKind.LeastHeat or PlanKind.OtherAlloy => _byHeat,
        PlanKind.NoLead => [.. _byHeat.Where(c => c.Mix.Alloy is null or { IsLeadFree: true })],
        PlanKind.NoPreheat => [.. _byHeat.Where(c => c.Station.Setting.Preheat is null)],
        PlanKind.NothingAdded => [.. _byHeat.Where(c => c.Mix.Alloy is null)],
        PlanKind.LeastEffort => [.. _byHeat.OrderBy(c => c.Passes).ThenBy(c => c.Mix.Added.Kilograms)],
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>Alloys that no plan uses, each with what its best candidate would take at least.</summary>
    internal IEnumerable<RuledOut> Beaten(IReadOnlyList<Plan> plans)
    {
        HashSet<string> used = [.. plans.Select(p => p.Alloy?.Name ?? string.Empty)];
        foreach (IGrouping<string, Candidate> alloy in _byHeat.Where(c => c.Mix.Alloy is not null).GroupBy(c => c.Mix.Name))
        {
            if (!used.Contains(alloy.Key) && plans.Count > 0)
            {
                Candidate best = alloy.First();
                yield return new RuledOut(alloy.Key, string.Create(
                    CultureInfo.InvariantCulture,
                    $"would work, but takes more heat or more passes than the plans shown: {best.Passes} passes, flow at {best.Mix.FlowC:0} °C with {best.Mix.Added.Milligrams:0.0} mg"));
            }
        }
    }

    /// <summary>
    /// The refit of the least heat with the same heat from below: the iron may be changed between touches, the board stays where it is.
    /// </summary>
    private static TouchPlan? RefitFor(Station station, IReadOnlyList<Station> stations) => stations
        .Where(s => s.Setting.Preheat == station.Setting.Preheat)
        .Select(s => s.Refit)
        .OfType<TouchPlan>()
        .MinBy(r => r.LaminateShare);
}
