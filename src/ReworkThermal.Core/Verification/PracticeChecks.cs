using ReworkThermal.Core.HeatFlow;

namespace ReworkThermal.Core.Verification;

/// <summary>What technicians expect of a joint beside what is computed with central values.</summary>
internal static class PracticeChecks
{
    /// <summary>Runs one row.</summary>
    /// <param name="row">The row: the least and the greatest time to flow, and the time that stands for never.</param>
    /// <param name="problem">Its case.</param>
    /// <returns>The comparison with the middle of the range; its room is half the range.</returns>
    internal static ComparedValue Row(ReferenceRow row, JointProblem problem)
    {
        double least = row.Number("least_s");
        double most = row.Number("most_s");
        double? computed = HeatSolver.Solve(problem) is HeatOutcome.Completed { Run: var run } ? run.Flow!.SecondsToFlow ?? row.Number("never_s") : null;
        return ComparedValue.Binding(
            VerificationArea.Practice,
            row,
            $"{row["situation"]}: time to flow",
            "s",
            (least + most) / 2,
            (most - least) / 2,
            computed,
            Remark(row, least, most));
    }

    private static string Remark(ReferenceRow row, double least, double most) =>
        least >= row.Number("never_s") ? $"Never; {row["never_s"]} s stand for it."
        : most >= row.Number("never_s") ? $"From {row["least_s"]} s to never; {row["never_s"]} s stand for never."
        : $"From {row["least_s"]} to {row["most_s"]} s.";
}
