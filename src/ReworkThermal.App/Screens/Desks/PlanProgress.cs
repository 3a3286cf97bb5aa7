namespace ReworkThermal.App.Screens.Desks;

/// <summary>How far a plan run is.</summary>
/// <param name="Share">Part done [1].</param>
/// <param name="Doing">What is being done, a few words.</param>
internal sealed record PlanProgress(double Share, string Doing);
