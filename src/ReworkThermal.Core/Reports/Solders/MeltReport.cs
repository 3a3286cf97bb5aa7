using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Solders;

/// <summary>
/// Answer to "what does this solder melt at?". Start reading this room here: a report is an answer as data, with the unit of each
/// figure in its type, its uncertainty, the sources it rests on and what a reader must know beside it. How a report looks is
/// decided elsewhere.
/// </summary>
public abstract record MeltReport
{
    private MeltReport(MassFractions composition, IReadOnlyList<string> notes, IReadOnlyList<string> sources)
    {
        Composition = composition;
        Notes = notes;
        Sources = sources;
    }

    /// <summary>What was asked about, by mass.</summary>
    public MassFractions Composition { get; }

    /// <summary>What was assumed or left out, one sentence each.</summary>
    public IReadOnlyList<string> Notes { get; private init; }

    /// <summary>The same answer with further notes.</summary>
    /// <param name="further">Put before the others, one sentence each.</param>
    /// <returns>The answer.</returns>
    public MeltReport With(IReadOnlyList<string> further) => this with { Notes = [.. further, .. Notes] };

    /// <summary>Citations of the assessments used.</summary>
    public IReadOnlyList<string> Sources { get; }

    /// <summary>The melting behaviour was found, and every equilibrium behind it is certified.</summary>
    /// <param name="Composition">What was asked about, by mass.</param>
    /// <param name="Solidus">Above it the first liquid is stable.</param>
    /// <param name="Liquidus">Above it nothing solid is stable.</param>
    /// <param name="Flow">97 % of the mass is liquid.</param>
    /// <param name="ScheilEnd">The last liquid freezes here when nothing diffuses in the solid; null when it was not computed.</param>
    /// <param name="LiquidFractionAt100C">Share of the mass still liquid at 100 °C on such cooling [kg/kg]; null when it was not computed.</param>
    /// <param name="LatentHeat">Heat taken up between solidus and liquidus beyond the sensible heat.</param>
    /// <param name="Density">At room temperature, from molar volumes that add.</param>
    /// <param name="Phases">Phases that take part, solid ones by falling share.</param>
    /// <param name="Uncertainty">Plus or minus on every temperature.</param>
    /// <param name="SolidusRise">How much higher than that the solidus may lie; zero where its place is as sure as the rest.</param>
    /// <param name="UncertaintyReasons">Why it is that large, one sentence each.</param>
    /// <param name="Notes">What was assumed or left out, one sentence each.</param>
    /// <param name="Sources">Citations of the assessments used.</param>
    public sealed record Computed(
        MassFractions Composition,
        Temperature Solidus,
        Temperature Liquidus,
        Temperature Flow,
        Temperature? ScheilEnd,
        double? LiquidFractionAt100C,
        SpecificEnergy LatentHeat,
        Density Density,
        IReadOnlyList<PhaseLine> Phases,
        TemperatureDelta Uncertainty,
        TemperatureDelta SolidusRise,
        IReadOnlyList<string> UncertaintyReasons,
        IReadOnlyList<string> Notes,
        IReadOnlyList<string> Sources) : MeltReport(Composition, Notes, Sources);

    /// <summary>Where melting begins is known, where it ends is not.</summary>
    /// <param name="Composition">What was asked about, by mass.</param>
    /// <param name="Solidus">Above it the first liquid is stable.</param>
    /// <param name="Reason">Why the rest is not known, one sentence.</param>
    /// <param name="Uncertainty">Plus or minus on the solidus.</param>
    /// <param name="UncertaintyReasons">Why it is that large, one sentence each.</param>
    /// <param name="Notes">What was assumed or left out, one sentence each.</param>
    /// <param name="Sources">Citations of the assessments used.</param>
    public sealed record SolidusOnly(
        MassFractions Composition,
        Temperature Solidus,
        string Reason,
        TemperatureDelta Uncertainty,
        IReadOnlyList<string> UncertaintyReasons,
        IReadOnlyList<string> Notes,
        IReadOnlyList<string> Sources) : MeltReport(Composition, Notes, Sources);

    /// <summary>No certified answer was found.</summary>
    /// <param name="Composition">What was asked about, by mass.</param>
    /// <param name="Reason">What stopped the computation, one sentence.</param>
    /// <param name="Notes">What was assumed or left out, one sentence each.</param>
    /// <param name="Sources">Citations of the assessments used.</param>
    public sealed record NotConverged(
        MassFractions Composition,
        string Reason,
        IReadOnlyList<string> Notes,
        IReadOnlyList<string> Sources) : MeltReport(Composition, Notes, Sources);
}

/// <summary>One phase that takes part in the melting of a solder.</summary>
/// <param name="Name">Name of the phase as the assessments use it, for example <c>BCT_A5</c>.</param>
/// <param name="Words">What it is at the bench, for example "tin-rich solid".</param>
/// <param name="From">Lowest temperature of the range looked at, at which it is stable.</param>
/// <param name="To">Highest temperature at which it is stable.</param>
/// <param name="GreatestShare">Greatest share of the mass it reaches in between [kg/kg].</param>
public sealed record PhaseLine(string Name, string Words, Temperature From, Temperature To, double GreatestShare);

/// <summary>Temperatures at which reports say how much of a joint is still liquid on real cooling; the names of their fields carry them.</summary>
internal static class ServiceTemperatures
{
    /// <summary>100 °C: a warm board in use; bismuth-lead-tin (96 °C) is liquid.</summary>
    internal static readonly Temperature Warm = Temperature.FromDegreesCelsius(100);

    /// <summary>140 °C: a hot board in use; bismuth-tin (139 °C) is liquid as well.</summary>
    internal static readonly Temperature Hot = Temperature.FromDegreesCelsius(140);
}
