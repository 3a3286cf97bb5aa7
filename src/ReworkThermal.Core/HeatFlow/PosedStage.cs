using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>A stretch of time with the same conditions at the faces.</summary>
/// <param name="Span">Its length, above zero.</param>
/// <param name="Patches">Conditions; faces without one are insulated.</param>
public sealed record PosedStage(Duration Span, IReadOnlyList<FacePatch> Patches);
