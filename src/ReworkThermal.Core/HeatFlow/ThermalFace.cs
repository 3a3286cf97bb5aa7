namespace ReworkThermal.Core.HeatFlow;

/// <summary>An outer face of the modelled body.</summary>
public enum ThermalFace
{
    /// <summary>Upper face; positions on it are radii.</summary>
    Top,

    /// <summary>Lower face; positions on it are radii.</summary>
    Bottom,

    /// <summary>Outer rim; positions on it are heights.</summary>
    Rim,

    /// <summary>Wall of a central bore; positions on it are heights.</summary>
    Bore,
}
