using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>What a jumper wire shall do.</summary>
/// <param name="Gauge">Conductor.</param>
/// <param name="Length">Length, above zero up to 1 m.</param>
/// <param name="Current">Current, zero or more.</param>
/// <param name="Supply">Voltage of the supply it carries, or null when it is no supply wire.</param>
/// <param name="Ambient">Temperature of air and board, −50 to 300 °C.</param>
/// <param name="CrossesBareCopper">Whether it crosses bare copper, joints or vias.</param>
public sealed record WireTask(WireGauge Gauge, Length Length, ElectricCurrent Current, ElectricPotential? Supply, Temperature Ambient, bool CrossesBareCopper);
