namespace ReworkThermal.App.Screens.Desks;

/// <summary>What is known about a touch before it begins.</summary>
/// <param name="FlowC">Flow temperature of what is in the joint [°C].</param>
/// <param name="MostPadC">Greatest temperature the pad may reach [°C], or null when no limit applies.</param>
/// <param name="BudgetBefore">Share of the pad's heat budget used before [1], or null when unknown.</param>
/// <param name="BudgetAtStop">The same when the tool comes off at the stop time [1], or null.</param>
internal sealed record BenchForecast(double FlowC, double? MostPadC, double? BudgetBefore, double? BudgetAtStop);
