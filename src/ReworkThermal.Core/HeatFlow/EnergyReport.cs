namespace ReworkThermal.Core.HeatFlow;

/// <summary>The heat balance of a run.</summary>
/// <param name="HeatInJ">Heat into the model by channel over the run [J]; negative when it left.</param>
/// <param name="StoredJ">Rise of the heat held by board, joint, tip and connector [J].</param>
/// <param name="BalanceError">Unexplained difference over the heat that moved; a sound run keeps it below 0.001.</param>
public sealed record EnergyReport(IReadOnlyDictionary<string, double> HeatInJ, double StoredJ, double BalanceError);
