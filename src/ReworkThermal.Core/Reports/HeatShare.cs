using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Heat that took one way into the model.</summary>
/// <param name="Way">The way, for example the iron or the bottom face.</param>
/// <param name="Heat">Heat over the whole run; negative where it left.</param>
public sealed record HeatShare(string Way, Energy Heat);
