using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>How the tools are set for a touch.</summary>
/// <param name="Iron">The iron with its tip.</param>
/// <param name="Set">Set temperature of the iron.</param>
/// <param name="Preheat">Heat from below; null for none.</param>
public sealed record ToolSetting(Iron Iron, Temperature Set, BoardHeat? Preheat);
