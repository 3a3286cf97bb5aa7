using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>Hot air that warms a joint before an iron touches it, and goes on until the iron is lifted.</summary>
/// <param name="Air">The nozzle over the joint.</param>
/// <param name="Set">Set temperature of the air.</param>
/// <param name="Lead">How long the air blows before the iron touches, zero or more.</param>
public sealed record AirAssist(HotAir Air, Temperature Set, Duration Lead);
