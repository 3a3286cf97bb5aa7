using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>How the solder of a joint fared in a heat-flow run.</summary>
/// <param name="Flow">Flow temperature of the solder.</param>
/// <param name="Superheat">How far above it the coldest solder had to come.</param>
/// <param name="TimeToFlow">When the coldest solder of the whole joint was there; null if it never was.</param>
/// <param name="ColdestPeak">Highest temperature of the coldest solder.</param>
/// <param name="LiquidFractions">Share of the solder that is liquid at the times of the report [1].</param>
/// <param name="FlowedFractions">Share of the solder that has flow temperature at those times [1].</param>
/// <param name="FrontFractions">Share of the barrel's length that has flowed from the touched face on at those times [1]; empty without a barrel.</param>
public sealed record SolderTrace(
    Temperature Flow,
    TemperatureDelta Superheat,
    Duration? TimeToFlow,
    Temperature ColdestPeak,
    IReadOnlyList<double> LiquidFractions,
    IReadOnlyList<double> FlowedFractions,
    IReadOnlyList<double> FrontFractions);
