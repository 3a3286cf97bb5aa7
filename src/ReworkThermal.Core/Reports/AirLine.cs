using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Hot air on a joint.</summary>
/// <param name="Nozzle">The nozzle.</param>
/// <param name="Setting">Set temperature of the air.</param>
/// <param name="Flow">Flow of free air.</param>
/// <param name="Distance">Distance of nozzle and board.</param>
/// <param name="Lead">How long it blows before the iron that it helps touches; zero when it does it alone.</param>
public sealed record AirLine(string Nozzle, Temperature Setting, VolumeFlow Flow, Length Distance, Duration Lead);
