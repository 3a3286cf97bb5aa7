using ReworkThermal.Core.Planning.Calibration;

namespace ReworkThermal.App.Commands;

/// <summary>An observed touch as the command line describes it.</summary>
/// <param name="Iron">Iron profile.</param>
/// <param name="SetC">Set temperature [°C].</param>
/// <param name="Preheater">Preheater profile; null for none.</param>
/// <param name="BoardC">Temperature of the settled board [°C]; null without a preheater.</param>
/// <param name="Solder">Solder in the joint; null for that of the request.</param>
/// <param name="Alloy">Alloy that was melted into it; null for none.</param>
/// <param name="AddedMg">Mass of that alloy [mg]; null for none.</param>
/// <param name="Seen">What was seen.</param>
internal sealed record ObservedWish(
    string Iron,
    double SetC,
    string? Preheater,
    double? BoardC,
    string? Solder,
    string? Alloy,
    double? AddedMg,
    Sighting Seen);
