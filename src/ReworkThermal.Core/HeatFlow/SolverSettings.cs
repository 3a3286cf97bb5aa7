using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

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
