using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>A differential pair that runs over jumper wires. A pair with a wire in one leg only has length zero in the other.</summary>
/// <param name="Gauge">Conductor of both legs.</param>
/// <param name="FirstLeg">Length of the wire in one leg, zero or more.</param>
/// <param name="SecondLeg">Length of the wire in the other leg, zero or more.</param>
/// <param name="Spacing">Distance of the wires from centre to centre, or null when they are not kept together.</param>
/// <param name="BitRate">Bits per second on the pair, above zero.</param>
public sealed record PairTask(WireGauge Gauge, Length FirstLeg, Length SecondLeg, Length? Spacing, BitRate BitRate);
