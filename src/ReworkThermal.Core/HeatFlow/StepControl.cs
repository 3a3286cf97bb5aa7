namespace ReworkThermal.Core.HeatFlow;

/// <summary>How finely time is stepped.</summary>
/// <param name="ToleranceK">Root-mean-square local error allowed per step [K].</param>
/// <param name="FirstStepS">First step after a change of boundary conditions [s].</param>
/// <param name="LongestStepS">Longest step [s].</param>
internal sealed record StepControl(double ToleranceK, double FirstStepS, double LongestStepS)
{
    /// <summary>Largest temperature error that a solved stage may have [K].</summary>
    internal double NewtonToleranceK { get; init; } = 0.03 * ToleranceK;

    /// <summary>Step length of a rung of the ladder [s]: 2^level.</summary>
    internal static double StepAt(int level) => Math.Pow(2, level);

    /// <summary>Highest rung that is not longer than a step.</summary>
    internal static int LevelFor(double seconds) => (int)Math.Floor(Math.Log2(seconds) + 1e-9);
}
