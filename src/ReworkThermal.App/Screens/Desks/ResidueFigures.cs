namespace ReworkThermal.App.Screens.Desks;

/// <summary>What add-and-wick passes leave, and what the refitted joint does.</summary>
/// <param name="Share">Part of the refitted joint that is residue of the mix [1].</param>
/// <param name="SolidusC">Solidus of the refitted joint [°C].</param>
/// <param name="ScheilEndC">Last liquid of the refitted joint on real cooling [°C].</param>
/// <param name="LiquidAt100">Share still liquid at 100 °C on real cooling [1].</param>
/// <param name="LiquidAt140">Share still liquid at 140 °C on real cooling [1].</param>
/// <param name="PassesNeeded">Fewest passes after which less than 0.1 % is liquid at 140 °C, or null when the most allowed do not do it.</param>
internal sealed record ResidueFigures(
    double Share,
    double SolidusC,
    double ScheilEndC,
    double LiquidAt100,
    double LiquidAt140,
    int? PassesNeeded);
