using UnitsNet;

namespace ReworkThermal.Core.HeatFlow.Solving;

/// <summary>How fine a run is in space and time. The defaults suit a plan.</summary>
public sealed record SolverSettings
{
    /// <summary>Root-mean-square local error allowed per time step, above zero.</summary>
    public TemperatureDelta StepTolerance { get; init; } = TemperatureDelta.FromKelvins(0.2);

    /// <summary>Cells per direction over those the program would choose, above zero: 2 doubles the mesh.</summary>
    public double Refinement { get; init; } = 1;

    /// <summary>Longest time step; null lets the error control choose.</summary>
    public Duration? LongestStep { get; init; }

    /// <summary>First time step after each change of boundary conditions; null takes 1 ms, in a posed problem at most a thousandth of the stretch.</summary>
    public Duration? FirstStep { get; init; }

    /// <summary>Whether to solve again on a doubled mesh and state the difference as the error estimate.</summary>
    public bool EstimateMeshError { get; init; }

    internal StepControl ControlFor(double spanS) => new(
        StepTolerance.Kelvins,
        FirstStep?.Seconds ?? Math.Min(1e-3, spanS * 1e-3),
        LongestStep?.Seconds ?? Math.Max(spanS / 4, 1e-9));
}

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
