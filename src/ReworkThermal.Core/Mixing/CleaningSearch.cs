using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>Follows a joint through passes and refit, and finds how many passes make it clean.</summary>
/// <param name="engine">Phase equilibria.</param>
public sealed class CleaningSearch(PhaseEngine engine)
{
    /// <summary>Share of the liquid per step of a quick look: five times the usual one.</summary>
    internal const double CoarseStep = 0.1;

    /// <summary>Factor around the limit within which a quick look does not decide; near the limit it is off by 1.14 at most.</summary>
    internal const double Doubt = 1.25;

    /// <summary>Answers a question.</summary>
    /// <param name="question">The question.</param>
    /// <returns>The final joint for every number of passes, and how many are enough.</returns>
    public CleaningAnswer Answer(CleaningQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentOutOfRangeException.ThrowIfLessThan(question.MostPasses, 1);
        List<FinalJoint> joints = [];
        for (int passes = 1; passes <= question.MostPasses; passes++)
        {
            if (After(question, passes, question.Removal.Efficiency.Central, out string reason) is not { } joint)
            {
                return new CleaningAnswer.Failed(reason);
            }

            joints.Add(joint);
        }

        return new CleaningAnswer.Followed(
            joints,
            joints.FirstOrDefault(j => j.IsClean)?.Passes,
            FirstClean(question, question.Removal.Efficiency.High),
            FirstClean(question, question.Removal.Efficiency.Low));
    }

    /// <summary>The final joint after a number of passes, with the central removal share.</summary>
    /// <param name="question">The question.</param>
    /// <param name="passes">Passes, one or more.</param>
    /// <returns>The joint; null when its melting or freezing could not be computed.</returns>
    public FinalJoint? After(CleaningQuestion question, int passes)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentOutOfRangeException.ThrowIfLessThan(passes, 1);
        return After(question, passes, question.Removal.Efficiency.Central, out _);
    }

    /// <summary>The final joint after the fewest passes that make it clean, with the central removal share.</summary>
    /// <param name="question">The question.</param>
    /// <param name="guess">Number of passes to try first; a good guess saves work and does not change the answer.</param>
    /// <returns>The joint; null when the most passes considered are not enough, or its melting could not be computed.</returns>
    public FinalJoint? FewestPasses(CleaningQuestion question, int guess)
    {
        ArgumentNullException.ThrowIfNull(question);
        Ratio removed = question.Removal.Efficiency.Central;
        int passes = Math.Clamp(guess, 1, question.MostPasses);
        FinalJoint? joint = After(question, passes, removed, out _);
        if (joint is { IsClean: true })
        {
            while (passes > 1 && After(question, passes - 1, removed, out _) is { IsClean: true } fewer)
            {
                joint = fewer;
                passes--;
            }

            return joint;
        }

        for (passes++; passes <= question.MostPasses; passes++)
        {
            if (After(question, passes, removed, out _) is { IsClean: true } more)
            {
                return more;
            }
        }

        return null;
    }

    /// <summary>
    /// Whether a number of passes makes the joint clean, with the central removal share. Freezing is followed in coarse steps and no
    /// further than needed; where that comes near the limit, in fine steps.
    /// </summary>
    /// <param name="question">The question.</param>
    /// <param name="passes">Passes, one or more.</param>
    /// <returns>Whether it does; false when its freezing could not be computed.</returns>
    internal bool IsCleanAfter(CleaningQuestion question, int passes)
    {
        (_, SolderCharge final) = Refitted(question, passes, question.Removal.Efficiency.Central);
        double limit = CleaningQuestion.MostLowMelting.DecimalFractions;
        double? left = engine.LiquidLeftAt(final.Fractions, CleaningQuestion.LowMelting, CoarseStep);
        if (left is null || (left > limit / Doubt && left < limit * Doubt))
        {
            left = engine.LiquidLeftAt(final.Fractions, CleaningQuestion.LowMelting);
        }

        return left <= limit;
    }

    private int? FirstClean(CleaningQuestion question, Ratio removed)
    {
        for (int passes = 1; passes <= question.MostPasses; passes++)
        {
            if (After(question, passes, removed, out _) is { IsClean: true })
            {
                return passes;
            }
        }

        return null;
    }

    private FinalJoint? After(CleaningQuestion question, int passes, Ratio removed, out string reason)
    {
        (SolderCharge residue, SolderCharge final) = Refitted(question, passes, removed);
        MeltingOutcome outcome = engine.MeltingOf(final.Fractions);
        if (outcome is not MeltingOutcome.Found melting)
        {
            reason = $"the melting of the final joint could not be computed: {outcome.Lack}";
            return null;
        }

        if (engine.SolidifyWithoutDiffusion(final.Fractions) is not ScheilOutcome.Found freezing)
        {
            reason = "the freezing of the final joint could not be computed";
            return null;
        }

        reason = string.Empty;
        return new FinalJoint(passes, removed, residue, final, melting.Behaviour, freezing.Path);
    }
    private static (SolderCharge Residue, SolderCharge Final) Refitted(CleaningQuestion question, int passes, Ratio removed)
    {
        IReadOnlyList<CleaningPass> plan = Cleaning.DiluteThenFlush(question.Joint, question.Dilution, question.Flush, passes, removed);
        SolderCharge residue = Cleaning.ResiduesAfter(question.Joint, plan)[^1];
        return (residue, Cleaning.Refilled(residue, question.Refill, question.Joint.Amount));
    }
}
