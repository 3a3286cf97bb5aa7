using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>A wire that was laid.</summary>
/// <param name="From">Pad it starts at.</param>
/// <param name="To">Pad it ends at; another pad of the job.</param>
/// <param name="Gauge">Conductor.</param>
/// <param name="Length">Length of the conductor, above zero up to 1 m.</param>
/// <param name="Insulation">Name of the wire profile or insulation, or null when bare.</param>
/// <param name="Pair">Name of the differential pair it serves, or null.</param>
public sealed record JumperWire(PadId From, PadId To, WireGauge Gauge, Length Length, string? Insulation, string? Pair = null);
