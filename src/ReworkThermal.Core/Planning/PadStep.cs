using ReworkThermal.Core.Damage;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;

namespace ReworkThermal.Core.Planning;

/// <summary>What one exposure did to a pad.</summary>
/// <param name="Heat">The exposure.</param>
/// <param name="Interface">Temperature at the pad-to-laminate interface; null when it is not known and the exposure is not counted.</param>
/// <param name="Simulated">Whether the temperature was computed, not measured.</param>
/// <param name="Melted">Whether the joint melted.</param>
/// <param name="Solder">Solder in the joint while it was hot.</param>
/// <param name="After">The pad after it.</param>
public sealed record PadStep(PadHeat Heat, TemperatureHistory? Interface, bool Simulated, bool Melted, SolderCharge Solder, PadDamage After);
