using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;

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
    /// Figures by which plans of a kind are ordered, the most important first. The budget is what the gauges of adhesion and melts themselves
    /// say of the pad afterwards.
    /// </summary>
    /// <param name="kind">Kind of plan.</param>
    /// <param name="damage">The pad's damage model.</param>
    /// <param name="before">The pad before the job.</param>
    internal (double First, double Second, double Third) RankFor(PlanKind kind, DamageModel damage, PadDamage before) => kind switch
    {
        PlanKind.SmallestBudget => (damage.ShareAfter(before, Charged, Melts), Charged, AddedKg),
        PlanKind.Surest => (Math.Ceiling(Tightness / TightnessStep), Melts, Charged),
        PlanKind.LeastEffort => (Melts + (Assisted ? 1 : 0), AddedKg, Laminate),
        _ => (Math.Ceiling(Charged / LaminateStep), Melts, AddedKg),
    };

    private double Charged => Assisted ? Laminate + LaminateStep : Laminate;
}
