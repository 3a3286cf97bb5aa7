using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Solders;

/// <summary>Answer to "how many passes are enough?": the refitted joint after every number of passes.</summary>
/// <param name="Joint">Name of the joint.</param>
/// <param name="Solder">What was in it, by mass.</param>
/// <param name="SolderMass">How much.</param>
/// <param name="Alloy">Name of the dilution alloy.</param>
/// <param name="Refill">Composition of the refit.</param>
/// <param name="Asked">Number of passes that was asked about.</param>
/// <param name="ByPasses">The final joint after 1, 2, ... passes; at least up to <paramref name="Asked"/>.</param>
/// <param name="Enough">Passes that make it clean with the usual share removed; null when none looked at does.</param>
/// <param name="EnoughAtBest">The same when every pass removes the most that is usual.</param>
/// <param name="EnoughAtWorst">The same when every pass removes the least that is usual.</param>
/// <param name="Uncertainty">Plus or minus on every temperature.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
/// <param name="Sources">Citations of the data used.</param>
public sealed record CleaningReport(
    string Joint,
    MassFractions Solder,
    Mass SolderMass,
    string Alloy,
    MassFractions Refill,
    int Asked,
    IReadOnlyList<CleaningLine> ByPasses,
    int? Enough,
    int? EnoughAtBest,
    int? EnoughAtWorst,
    TemperatureDelta Uncertainty,
    IReadOnlyList<string> Notes,
    IReadOnlyList<string> Sources);

/// <summary>The refitted joint after a number of passes.</summary>
/// <param name="Passes">Number of passes.</param>
/// <param name="ResidueFraction">Share of the refitted joint that the last pass left [kg/kg].</param>
/// <param name="Final">The refitted joint.</param>
public sealed record CleaningLine(int Passes, double ResidueFraction, FinalJointLine Final);

/// <summary>A joint after its passes and the refit.</summary>
/// <param name="Composition">What it is made of, by mass.</param>
/// <param name="Solidus">Its solidus.</param>
/// <param name="ScheilEnd">Where its last liquid freezes on real cooling.</param>
/// <param name="LiquidFractionAt100C">Share of the mass still liquid at 100 °C [kg/kg].</param>
/// <param name="LiquidFractionAt140C">Share of the mass still liquid at 140 °C [kg/kg].</param>
/// <param name="IsClean">Whether the low-melting share is small enough.</param>
public sealed record FinalJointLine(
    MassFractions Composition,
    Temperature Solidus,
    Temperature ScheilEnd,
    double LiquidFractionAt100C,
    double LiquidFractionAt140C,
    bool IsClean);
