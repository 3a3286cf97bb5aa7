using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Temperature of one place against the times of its report.</summary>
/// <param name="Name">Name of the place, a JSON-safe identifier such as <c>near_pad</c>.</param>
/// <param name="Temperatures">One per time.</param>
public sealed record ProbeTrace(string Name, IReadOnlyList<Temperature> Temperatures);
