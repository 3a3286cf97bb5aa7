using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Planning;

namespace ReworkThermal.Core.Reports;

/// <summary>What a touch cost one pad.</summary>
/// <param name="Before">Its budget before.</param>
/// <param name="After">The pad after.</param>
public sealed record PadCost(HeatBudget Before, PadAccount After);
