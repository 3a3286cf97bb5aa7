using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>
/// Finds, for every alloy, the smallest amount that brings the flow temperature of the mix down to a target, and ranks them. The flow
/// temperature need not fall evenly with the amount (an intermetallic compound may come out first), so a ladder of amounts is walked
/// up to the first that reaches the target, and the step before it is narrowed by bisection.
/// </summary>
/// <param name="engine">Phase equilibria.</param>
public sealed class DilutionSearch(PhaseEngine engine)
{
    /// <summary>Amounts on the ladder per alloy.</summary>
    public const int Rungs = 20;

    private const int Bisections = 5;

    /// <summary>Answers a question; alloys are worked on in parallel and the answer does not depend on how many cores there are.</summary>
    /// <param name="question">The question.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The ranking.</returns>
    public DilutionRanking Rank(DilutionQuestion question, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        Attempt[] attempts = new Attempt[question.Alloys.Count];
        Parallel.For(0, attempts.Length, new ParallelOptions { CancellationToken = cancellation }, i =>
            attempts[i] = Try(question, question.Alloys[i], cancellation));
        return new DilutionRanking(
            [.. attempts.Select(a => a.Choice).OfType<DilutionChoice>().OrderBy(c => c.Added.Kilograms).ThenBy(c => c.Alloy.Name, StringComparer.Ordinal)],
            [.. attempts.Select(a => a.Excluded).OfType<ExcludedAlloy>()]);
    }

    /// <summary>One alloy in one amount.</summary>
    /// <param name="joint">Solder in the joint.</param>
    /// <param name="alloy">The dilution alloy.</param>
    /// <param name="share">Share of the mix that is added alloy, 0 to below 100 %.</param>
    /// <returns>The mix, or why it could not be computed.</returns>
    public DilutionOutcome Mix(SolderCharge joint, Alloy alloy, Ratio share)
    {
        ArgumentNullException.ThrowIfNull(joint);
        ArgumentNullException.ThrowIfNull(alloy);
        Mass added = joint.AmountForShare(share);
        SolderCharge mix = joint.With(new SolderCharge(added, alloy.Fractions));
        MeltingOutcome outcome = engine.MeltingOf(mix.Fractions);
        return outcome is MeltingOutcome.Found melting
            ? Freeze(joint, alloy, share, added, mix, melting.Behaviour)
            : new DilutionOutcome.Failed(outcome.Lack!);
    }

    private DilutionOutcome Freeze(SolderCharge joint, Alloy alloy, Ratio share, Mass added, SolderCharge mix, MeltingBehaviour melting) =>
        engine.SolidifyWithoutDiffusion(mix.Fractions) switch
        {
            ScheilOutcome.Found path => new DilutionOutcome.Mixed(
                new DilutionChoice(alloy, share, added, mix, melting, path.Path, MixHazards.Of(joint.Fractions, alloy.Fractions))),
            ScheilOutcome.NotConverged failed => new DilutionOutcome.Failed(failed.Reason),
            ScheilOutcome.OutsideModel outside => new DilutionOutcome.Failed(outside.Reason),
            _ => throw new InvalidOperationException("unknown kind of freezing outcome"),
        };

    private Attempt Try(DilutionQuestion question, Alloy alloy, CancellationToken cancellation)
    {
        if (question.LeadFreeOnly && !alloy.IsLeadFree)
        {
            return Attempt.Out(alloy, "contains lead, and only lead-free alloys are wanted");
        }

        double most = question.MostAddedShare.DecimalFractions;
        double below = 0;
        double? reached = null;
        double coolest = double.PositiveInfinity;
        double coolestShare = 0;
        for (int rung = 1; rung <= Rungs && reached is null; rung++)
        {
            cancellation.ThrowIfCancellationRequested();
            double share = most * rung / Rungs;
            double? flow = FlowCelsius(question.Joint, alloy, share, out string? failure);
            if (flow is null)
            {
                return Attempt.Out(alloy, failure!);
            }

            if (flow < coolest)
            {
                coolest = flow.Value;
                coolestShare = share;
            }

            if (flow <= question.TargetFlow.DegreesCelsius)
            {
                reached = share;
            }
            else
            {
                below = share;
            }
        }

        if (reached is not { } enough)
        {
            return Attempt.Out(
                alloy,
                string.Create(CultureInfo.InvariantCulture, $"no amount up to {most:P0} of the mix reaches {question.TargetFlow.DegreesCelsius:0} °C; the lowest flow temperature is {coolest:0} °C at {coolestShare:P0}"));
        }

        for (int i = 0; i < Bisections; i++)
        {
            double middle = (below + enough) / 2;
            if (FlowCelsius(question.Joint, alloy, middle, out _) <= question.TargetFlow.DegreesCelsius)
            {
                enough = middle;
            }
            else
            {
                below = middle;
            }
        }

        return Mix(question.Joint, alloy, Ratio.FromDecimalFractions(enough)) switch
        {
            DilutionOutcome.Mixed mixed => new Attempt(mixed.Choice, null),
            DilutionOutcome.Failed failed => Attempt.Out(alloy, failed.Reason),
            _ => throw new InvalidOperationException("unknown kind of dilution outcome"),
        };
    }

    private double? FlowCelsius(SolderCharge joint, Alloy alloy, double share, out string? failure)
    {
        MeltingOutcome outcome = engine.MeltingOf(joint.Fractions.MixedWith(alloy.Fractions, share));
        failure = outcome.Lack;
        return outcome is MeltingOutcome.Found found ? found.Behaviour.Flow.DegreesCelsius : null;
    }

    private readonly record struct Attempt(DilutionChoice? Choice, ExcludedAlloy? Excluded)
    {
        internal static Attempt Out(Alloy alloy, string reason) => new(null, new ExcludedAlloy(alloy.Name, reason));
    }
}
