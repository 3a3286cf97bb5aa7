using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Phases;

/// <summary>A listed reaction beside what the engine computes for it.</summary>
/// <param name="System">The system it is listed in.</param>
/// <param name="Listed">The published figures.</param>
/// <param name="ComputedCelsius">Computed temperature [°C]; null when the reaction was not met.</param>
/// <param name="ComputedLiquid">Computed composition of the liquid; null when the reaction was not met.</param>
public sealed record InvariantComparison(SystemDescription System, ListedInvariant Listed, double? ComputedCelsius, MassFractions? ComputedLiquid)
{
    /// <summary>Largest difference [K] between the computed temperature and the one written in the file that is not a drift.</summary>
    public const double DriftKelvin = 0.05;

    /// <summary>Computed minus published temperature [K]; null when the reaction was not met.</summary>
    public double? DeviationKelvin => ComputedCelsius - Listed.Celsius;

    /// <summary>Whether the reaction was met within its tolerances of temperature and composition.</summary>
    public bool Agrees => DeviationKelvin is { } deviation && Math.Abs(deviation) <= Listed.ToleranceKelvin && LiquidAgrees;

    /// <summary>Whether the computed temperature is the one written in the file.</summary>
    public bool Unchanged => ComputedCelsius is { } computed && Math.Abs(computed - Listed.ComputedCelsius) <= DriftKelvin;

    private bool LiquidAgrees => Listed.Liquid is not { } liquid
        || (ComputedLiquid is { } computed && ElementData.All.All(e => Math.Abs(liquid[e] - computed[e]) <= Listed.LiquidTolerance));
}
