using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>What was asked of <c>dilute</c>, as it stands on the command line.</summary>
/// <param name="Joint">Identifier of a joint profile.</param>
/// <param name="Board">Identifier of a board profile; null when not named.</param>
/// <param name="Solder">What is in the joint; null when not named.</param>
/// <param name="With">Alloy to add; null to compare all.</param>
/// <param name="Ratio">Mass share of the added alloy in the mix; null when a target is given.</param>
/// <param name="TargetFlow">Wanted flow temperature [°C]; null when a ratio is given.</param>
/// <param name="WireMm">Diameter of the wire [mm]; null when not named.</param>
/// <param name="LeadFreeOnly">Whether alloys with lead are left out.</param>
/// <param name="PickedUp">Metal taken up from barrel and finish.</param>
internal sealed record DilutionWish(
    string Joint,
    string? Board,
    string? Solder,
    string? With,
    double? Ratio,
    double? TargetFlow,
    double? WireMm,
    bool LeadFreeOnly,
    (Mass Copper, Mass Silver) PickedUp);
