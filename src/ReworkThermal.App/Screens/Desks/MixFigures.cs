namespace ReworkThermal.App.Screens.Desks;

/// <summary>Figures of a mix, for the screen.</summary>
/// <param name="FlowC">Flow temperature [°C].</param>
/// <param name="LiquidusC">Liquidus [°C].</param>
/// <param name="SolidusC">Solidus [°C].</param>
/// <param name="ScheilEndC">Last liquid on real cooling [°C]; null when it has no certified value.</param>
/// <param name="UncertaintyK">Half-width on each of these [K].</param>
/// <param name="Curve">Liquid share [1] against temperature [°C], rising.</param>
/// <param name="JointMg">Solder in the joint [mg]; null when the joint gives none.</param>
/// <param name="AddedMg">Metal to add [mg]; null likewise.</param>
/// <param name="Residue">What the passes leave, or null when it cannot be told.</param>
/// <param name="Remarks">Hazards, caveats and assumptions, one sentence each.</param>
internal sealed record MixFigures(
    double FlowC,
    double LiquidusC,
    double SolidusC,
    double? ScheilEndC,
    double UncertaintyK,
    IReadOnlyList<(double Celsius, double Liquid)> Curve,
    double? JointMg,
    double? AddedMg,
    ResidueFigures? Residue,
    IReadOnlyList<string> Remarks);
