using ReworkThermal.Core.HeatFlow;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>What the simulation knows of a finished touch.</summary>
/// <param name="Interface">Temperature at the interface of pad and laminate, from contact to release.</param>
/// <param name="Melted">Whether any of the solder melted.</param>
internal sealed record BenchRelease(TemperatureHistory Interface, bool Melted);
