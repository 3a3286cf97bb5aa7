namespace ReworkThermal.App.Commands;

/// <summary>What was asked of <c>dilute</c>, as it stands on the command line.</summary>
/// <param name="Joint">Which solder in which joint.</param>
/// <param name="With">Alloy to add; null to compare all.</param>
/// <param name="Ratio">Mass share of the added alloy in the mix; null when a target is given.</param>
/// <param name="TargetFlow">Wanted flow temperature [°C]; null when a ratio is given.</param>
/// <param name="WireMm">Diameter of the wire [mm]; null when not named.</param>
/// <param name="LeadFreeOnly">Whether alloys with lead are left out.</param>
/// <param name="AllAlloys">Whether all listed dilution alloys are compared, not the usual ones alone.</param>
internal sealed record DilutionWish(
    JointWish Joint,
    string? With,
    double? Ratio,
    double? TargetFlow,
    double? WireMm,
    bool LeadFreeOnly,
    bool AllAlloys);
