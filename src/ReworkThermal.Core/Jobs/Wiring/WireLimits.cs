using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Limits by which a jumper wire is judged; all from a data file, with their sources.</summary>
/// <param name="FusingShare">Share of the Preece current that may flow, 0 to 1.</param>
/// <param name="CurrentDensity">Current per cross-section [A/mm²] for single wires in open air.</param>
/// <param name="DropShare">Share of the supply voltage that may be lost in the wire, 0 to 1.</param>
/// <param name="SkewShare">Share of the bit time by which the legs of a pair may differ, 0 to 1.</param>
/// <param name="TryAndTest">Bit rate above which a wire pair must be tried and tested.</param>
/// <param name="SeldomRepairable">Bit rate above which wire seldom works.</param>
public sealed record WireLimits(
    Estimate<double> FusingShare,
    Estimate<double> CurrentDensity,
    Estimate<double> DropShare,
    Estimate<double> SkewShare,
    Estimate<BitRate> TryAndTest,
    Estimate<BitRate> SeldomRepairable);
