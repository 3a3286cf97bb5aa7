using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Reports;

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
