using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Searching;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>
/// Finds plans for one joint. Every tool setting is run once without heat of melting, which bounds the time to flow of every mix from
/// below; candidates are ordered by that bound and confirmed by real runs, best first, until no bound can beat what is confirmed.
/// The answer depends on the request alone, not on the number of cores.
/// </summary>
/// <param name="engine">Phase equilibria.</param>
/// <param name="properties">Density and conductivity rules.</param>
/// <param name="limits">Damage limits.</param>
public sealed class PlanSearch(PhaseEngine engine, SolderProperties properties, DamageLimits limits)
{
    private const int LeastPlans = 4;

    // Half a percent of an element, a twentieth of the joint: less does not move a plan by a step of its grid.
    private const double NoticeableFraction = 0.005;
    private const double NoticeableFill = 0.05;

    // One pass and the refit.
    private const int FewestMelts = 2;

    /// <summary>Answers a request.</summary>
    /// <param name="request">The request; its joint must be a through-hole joint.</param>
    /// <param name="progress">Told how far the search is; may be null.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>Plans, or why there is none.</returns>
    /// <exception cref="ArgumentException">The joint is not a through-hole joint, or the board's class of laminate is unknown.</exception>
    public PlanOutcome Search(PlanRequest request, IProgress<PlanProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        Workload work = Workload.Of(request, limits, properties);
        if (MixOptions.Make(engine, request, work.Solder, cancellation, out string failure) is not { } mixes)
        {
            return Failed(failure, request);
        }

        if (engine.MeltingOf(request.Refill.Fractions) is not MeltingOutcome.Found refill)
        {
            return Failed($"the melting of the refill alloy {request.Refill.Name} could not be computed", request);
        }

        if (work.BudgetAfterMelts(FewestMelts) is var fewest && !work.Allows(fewest))
        {
            return new PlanOutcome.NoPlan(Shortfall.OfPad(work, FewestMelts, fewest)) { RuledOut = mixes.RuledOut, Assumptions = Assumptions(work) };
        }

        SolderHeat heat = new(properties);
        TouchSimulator simulator = new(work);
        StationBuilder builder = new(work, simulator, heat);
        IReadOnlyList<Station> stations = builder.Build(closely: false, mixes.AsIs.Melting, refill.Behaviour, progress, cancellation);
        double[] flowsC = [refill.Behaviour.Flow.DegreesCelsius, .. mixes.Diluted.Prepend(mixes.AsIs).Select(m => m.FlowC)];
        AssistedStations assisted = builder.BuildAssisted(stations, mixes.AsIs.Melting, refill.Behaviour, (flowsC.Min(), flowsC.Max()), progress, cancellation);
        stations = [.. stations, .. assisted.Stations];
        if (stations.All(s => s.Refit is null) && request.Bench.Preheaters.Count > 0)
        {
            // What would work may lie between two temperatures of the board.
            stations = builder.Build(closely: true, mixes.AsIs.Melting, refill.Behaviour, progress, cancellation);
        }

        if (stations.All(s => s.Refit is null))
        {
            return new PlanOutcome.NoPlan(Shortfall.OfRefit(work, stations, refill.Behaviour)) { RuledOut = mixes.RuledOut, Assumptions = Assumptions(work) };
        }

        PassCounts counts = PassCounts.Make(engine, work, mixes, cancellation);
        CandidateList candidates = CandidateList.Make(work, mixes, counts, stations, builder.LaminatePerTouch);
        Confirmation confirmation = new(work, engine, simulator, heat, counts, builder.LaminatePerTouch);
        List<Plan> plans = Choose(candidates, confirmation, progress, cancellation);
        Plan? simplest = confirmation.Best(PlanKind.NothingAdded, [.. candidates.For(PlanKind.NothingAdded).Where(c => c.Station.Setting.Preheat is null)], cancellation);
        List<RuledOut> ruledOut =
        [
            .. mixes.RuledOut,
            .. Shortfall.OfKinds(work, mixes, stations, plans, simplest, confirmation.StuckWith(mixes.AsIs)),
            .. Shortfall.OfAir(work, mixes, stations, plans),
            .. Shortfall.OfAssist(work, mixes, assisted, stations, plans),
            .. candidates.Beaten(plans),
            .. Shortfall.OfMixes(work, mixes, counts, candidates, stations),
            .. Shortfall.OfCleaning(work, mixes, counts),
        ];
        return plans.Count > 0
            ? new PlanOutcome.Planned(plans) { RuledOut = ruledOut, Assumptions = Assumptions(work) }
            : new PlanOutcome.NoPlan(WhyNone(work, mixes, stations, counts, confirmation)) { RuledOut = ruledOut, Assumptions = Assumptions(work) };
    }

    private static string WhyNone(Workload work, MixOptions mixes, IReadOnlyList<Station> stations, PassCounts counts, Confirmation confirmation)
    {
        if (confirmation.LeastPast is var (melts, after))
        {
            return Shortfall.OfPad(work, melts, after);
        }

        if (confirmation.Stuck is { } stuck)
        {
            return Shortfall.OfBraid(stuck);
        }

        int? fewest = mixes.Diluted.Prepend(mixes.AsIs).Min(counts.Of) + 1;
        return fewest is { } least && work.BudgetAfterMelts(least) is var atLeast && !work.Allows(atLeast)
            ? Shortfall.OfPad(work, least, atLeast)
            : Shortfall.OfFirst(work, mixes, stations);
    }

    private static List<Plan> Choose(CandidateList candidates, Confirmation confirmation, IProgress<PlanProgress>? progress, CancellationToken cancellation)
    {
        PlanKind[] kinds = [.. Enum.GetValues<PlanKind>().Where(k => k != PlanKind.OtherAlloy)];
        Plan?[] best = new Plan?[kinds.Length];
        int done = 0;
        Parallel.For(0, kinds.Length, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            best[i] = confirmation.Best(kinds[i], candidates.For(kinds[i]), cancellation);
            progress?.Report(new PlanProgress(0.7 + (0.3 * Interlocked.Increment(ref done) / kinds.Length), "confirming the best candidates"));
        });
        List<Plan> plans = [];
        foreach (Plan? plan in best)
        {
            Add(plans, plan);
        }

        while (plans.Count < LeastPlans)
        {
            HashSet<string?> used = [.. plans.Select(p => p.Alloy?.Name)];
            Plan? other = confirmation.Best(PlanKind.OtherAlloy, [.. candidates.For(PlanKind.OtherAlloy).Where(c => !used.Contains(c.Mix.Alloy?.Name))], cancellation);
            if (other is null)
            {
                break;
            }

            Add(plans, other);
        }

        return plans;
    }

    private static void Add(List<Plan> plans, Plan? plan)
    {
        if (plan is not null && !plans.Exists(p => p.Alloy == plan.Alloy && p.Added.Equals(plan.Added, Mass.FromMicrograms(1)) && p.First.Setting == plan.First.Setting))
        {
            plans.Add(plan);
        }
    }

    private static PlanOutcome.Failed Failed(string reason, PlanRequest request) => new(reason) { RuledOut = [], Assumptions = request.Assumed };

    private static string EarlierHeat(PlanRequest request) => request.Pad is { } pad
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"pad {pad.Ledger.Pad}: logged touches {pad.Steps.Count}, not counted of these {pad.NotCounted}, and before them {pad.Prior.Name} ({pad.Prior.Description})")
        : $"earlier heat of the pad: {request.Prior.Name} ({request.Prior.Description})";

    // What a job has put into a joint and taken out of it is known roughly only; a plan keeps to the request and says where they differ.
    private static IEnumerable<string> OtherContents(Workload work, PadAccount pad)
    {
        double difference = Enum.GetValues<Element>().Max(e => Math.Abs(pad.Contents.Fractions[e] - work.Solder.Fractions[e]));
        if (difference > NoticeableFraction || Math.Abs(pad.Fill - 1) > NoticeableFill)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"the logged touches leave {pad.Contents.Amount.Milligrams:0.0} mg of {pad.Contents.Fractions} in the joint of pad {pad.Ledger.Pad}; the plan is for the request's solder, filled through");
        }
    }

    private static string WorkingTime(Workload work) => string.Create(
        CultureInfo.InvariantCulture,
        $"{work.Solder.Amount.Milligrams:0} mg of solder take the {work.Request.Bench.Removal.Name} {work.Limits.WorkingTime.Value.Seconds:0.0} s at {work.Request.Bench.Removal.Rate.Central.MilligramsPerSecond:0} mg/s, more than the usual working time of {work.Request.Limits.WorkingTime.Value.Seconds:0.#} s");

    private static IReadOnlyList<string> Assumptions(Workload work) =>
    [
        .. work.Request.Assumed,
        .. work.Request.Calibration is { } learned
            ? [string.Create(CultureInfo.InvariantCulture, $"calibrated by {learned.Observations} observed touches on {learned.Board}: contact, copper and tip temperature are the most likely ones, not those of the profiles")]
            : Array.Empty<string>(),
        $"the joint is filled through, with hollow fillets: {work.Solder.Amount.Milligrams.ToString("0.0", CultureInfo.InvariantCulture)} mg of {work.Request.BaseSolder.Name}",
        "the added alloy is fully mixed with the joint's solder; while it is still dissolving, the joint flows later than computed",
        EarlierHeat(work.Request),
        .. work.Limits.WorkingTime == work.Request.Limits.WorkingTime ? Array.Empty<string>() : [WorkingTime(work)],
        .. work.Request.Pad is { } pad ? OtherContents(work, pad) : [],
        "every touch starts with a cooled board, or with the board settled over the preheater",
    ];
}
