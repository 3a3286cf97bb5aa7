using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Solders;

/// <summary>The solder that is in a joint at the end, with how it melts and freezes.</summary>
/// <param name="Pad">Pad of the joint.</param>
/// <param name="Solder">Mass and composition by the record.</param>
/// <param name="Solidus">First liquid on slow heating.</param>
/// <param name="Flow">97 % of the mass liquid.</param>
/// <param name="Liquidus">No solid left.</param>
/// <param name="Curve">Liquid share against temperature.</param>
/// <param name="ScheilEnd">Last liquid on real cooling; null when it was not found.</param>
/// <param name="LiquidAt100C">Share of the mass still liquid at 100 °C on real cooling; null when not found.</param>
/// <param name="LiquidAt140C">The same at 140 °C.</param>
public sealed record FinalSolder(
    PadId Pad,
    SolderCharge Solder,
    Temperature Solidus,
    Temperature Flow,
    Temperature Liquidus,
    MeltCurveReport Curve,
    Temperature? ScheilEnd,
    double? LiquidAt100C,
    double? LiquidAt140C);
