using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Planning;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>What the simulation knows of a finished touch.</summary>
/// <param name="Interface">Temperature at the interface of pad and laminate, from contact to release.</param>
/// <param name="Melted">Whether any of the solder melted.</param>
/// <param name="Use">How the tools were used, with what was assumed.</param>
internal sealed record BenchRelease(TemperatureHistory Interface, bool Melted, ToolUse Use);
