namespace ReworkThermal.Core.Damage;

/// <summary>The separate gauges of a pad.</summary>
public enum GaugeKind
{
    /// <summary>Damage sum of the laminate against its time to delamination.</summary>
    Laminate,

    /// <summary>Share of the bond between pad and laminate that is lost.</summary>
    Adhesion,

    /// <summary>Spare copper of the knee or the land that is dissolved.</summary>
    Copper,

    /// <summary>Fatigue of the plated barrel.</summary>
    Barrel,

    /// <summary>Number of melts against published tests.</summary>
    Melts,
}
