using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>What a pad can hold against one way of pulling.</summary>
/// <param name="Demand">The way of pulling.</param>
/// <param name="Force">Its force.</param>
/// <param name="Margin">Capacity over force: low with the least capacity and the greatest force, high the other way round; below 1 the
/// pad does not hold.</param>
/// <param name="Outcome">What the margin says.</param>
public sealed record PullMargin(PullDemand Demand, RatedEstimate<Force> Force, Spread Margin, PullOutcome Outcome);
