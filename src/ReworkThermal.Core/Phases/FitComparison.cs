using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Phases;

/// <summary>A fitted point beside what the engine computes for it.</summary>
/// <param name="System">The system it is listed in.</param>
/// <param name="Point">The published point.</param>
/// <param name="ComputedCelsius">Temperature [°C] at which the solid touches the liquid; null when it does at none.</param>
public sealed record FitComparison(SystemDescription System, FitPoint Point, double? ComputedCelsius)
{
    /// <summary>Largest difference [K] between the computed residual and the one written in the file that is not a drift.</summary>
    public const double DriftKelvin = 0.05;

    /// <summary>Computed minus published temperature [K], zero for a bound that is kept; null when a solid that should form does not.</summary>
    public double? ResidualKelvin => Point.IsBound ? Math.Max(0, (ComputedCelsius ?? Point.Celsius) - Point.Celsius) : ComputedCelsius - Point.Celsius;

    /// <summary>Whether the residual is the one written in the file.</summary>
    public bool Unchanged => ResidualKelvin is { } residual && Math.Abs(residual - Point.ResidualKelvin) <= DriftKelvin;
}
