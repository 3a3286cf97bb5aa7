namespace ReworkThermal.Core.Planning.Pads;

/// <summary>What a job takes of a pad, as far as plans are ranked by it.</summary>
/// <param name="Laminate">Share of the laminate's time to delamination, all touches together, central [1].</param>
/// <param name="Melts">Melts of the job: passes and refit.</param>
/// <param name="AddedKg">Mass of added alloy [kg].</param>
/// <param name="Tightness">Time to flow of the first touch over the time there is for it [1].</param>
/// <param name="Assisted">Whether the first touch takes two tools on the joint at once.</param>
internal readonly record struct JobCost(double Laminate, int Melts, double AddedKg, double Tightness, bool Assisted)
{
    // A twentieth of the time there is: finer differences of the margin are not worth another melt.
    private const double TightnessStep = 0.05;

    // Half a percent of the time to delamination: less than any uncertainty of the laminate sum, so not worth another melt, more alloy or
    // a second tool in the other hand.
    private const double LaminateStep = 0.005;

    /// <summary>
    /// Figures by which plans of a kind are ordered, the most important first. Adhesion lost is 1 - (1 - D) (1 - delta)^N with the laminate
    /// sum D and N melts, the adhesion gauge's own formula for a pad that was sound.
    /// </summary>
    /// <param name="kind">Kind of plan.</param>
    /// <param name="lossPerMelt">Adhesion lost per melt, delta [1].</param>
    internal (double First, double Second, double Third) RankFor(PlanKind kind, double lossPerMelt) => kind switch
    {
        PlanKind.SmallestBudget => (1 - (Math.Max(0, 1 - Charged) * Math.Pow(1 - lossPerMelt, Melts)), Charged, AddedKg),
        PlanKind.Surest => (Math.Ceiling(Tightness / TightnessStep), Melts, Charged),
        PlanKind.LeastEffort => (Melts + (Assisted ? 1 : 0), AddedKg, Laminate),
        _ => (Math.Ceiling(Charged / LaminateStep), Melts, AddedKg),
    };

    private double Charged => Assisted ? Laminate + LaminateStep : Laminate;
}
