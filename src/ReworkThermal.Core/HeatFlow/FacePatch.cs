using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>A condition on part of an outer face.</summary>
/// <param name="Face">The face.</param>
/// <param name="From">Begin of the part: a radius on the flat faces, a height on rim and bore.</param>
/// <param name="To">End of the part.</param>
/// <param name="Condition">What happens there. Several patches may lie over each other; their effects add up.</param>
public sealed record FacePatch(ThermalFace Face, Length From, Length To, FaceCondition Condition);
