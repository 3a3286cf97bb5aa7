using UnitsNet;

namespace ReworkThermal.Core.Damage;

/// <summary>Forces that hands and tools put on a pad.</summary>
/// <param name="Free">A lead that comes out by itself [N].</param>
/// <param name="Nudged">A lead that is nudged [N].</param>
/// <param name="Pried">A lead that is pried [N].</param>
public sealed record PullParameters(RatedEstimate<Force> Free, RatedEstimate<Force> Nudged, RatedEstimate<Force> Pried);
