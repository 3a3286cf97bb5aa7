namespace ReworkThermal.App.Screens.Desks;

/// <summary>What is known about a touch before it begins.</summary>
/// <param name="FlowC">Flow temperature of what is in the joint [°C].</param>
/// <param name="MostPadC">Greatest temperature the pad may reach [°C], or null when no limit applies.</param>
/// <param name="BudgetBefore">Share of the pad's heat budget used before [1], or null when unknown.</param>
/// <param name="BudgetAtStop">The same when the tool comes off at the stop time [1], or null.</param>
/// <param name="WarmStartC">Pad at contact, when earlier touches left heat in the board [°C]; null on a board at rest.</param>
/// <param name="Fresh">Whether board and joint are as a calibration takes them: at rest, and full of the solder that arrived.</param>
/// <param name="Assumed">What was assumed about the tools, one clause each; null or empty when everything was said.</param>
internal sealed record BenchForecast(double FlowC, double? MostPadC, double? BudgetBefore, double? BudgetAtStop, double? WarmStartC = null, bool Fresh = true, IReadOnlyList<string>? Assumed = null);
