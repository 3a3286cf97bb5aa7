using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>How the tools are set for a touch: an iron or hot air on the joint, with or without heat from below.</summary>
/// <param name="Iron">The iron with its tip; null when hot air is used.</param>
/// <param name="Set">Set temperature of the tool on the joint.</param>
/// <param name="Preheat">Heat from below; null for none.</param>
/// <param name="Air">Hot air on the joint; null when an iron is used.</param>
public sealed record ToolSetting(Iron? Iron, Temperature Set, BoardHeat? Preheat, HotAir? Air = null)
{
    /// <summary>Name of the tool on the joint.</summary>
    public string ToolName => Iron?.Name ?? Air?.Nozzle.Name ?? string.Empty;
}
