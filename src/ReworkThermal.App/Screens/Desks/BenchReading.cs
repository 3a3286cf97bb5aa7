namespace ReworkThermal.App.Screens.Desks;

/// <summary>The simulated joint at one moment.</summary>
/// <param name="Seconds">Time since contact [s].</param>
/// <param name="PadC">Interface of pad and laminate [°C].</param>
/// <param name="ColdestSolderC">Coldest solder of the joint [°C].</param>
/// <param name="Liquid">Share of the solder that is liquid [1].</param>
/// <param name="Flows">Whether the whole joint flows.</param>
/// <param name="BudgetNow">Share of the pad's heat budget used if the tool came off now [1], or null when unknown.</param>
internal sealed record BenchReading(double Seconds, double PadC, double ColdestSolderC, double Liquid, bool Flows, double? BudgetNow);
