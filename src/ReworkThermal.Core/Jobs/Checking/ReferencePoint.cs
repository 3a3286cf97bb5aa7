namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>Where the second probe goes in a continuity check.</summary>
public enum ReferencePoint
{
    /// <summary>The far end of the pin's own track.</summary>
    Destination,

    /// <summary>The board's ground, at a place away from the connector.</summary>
    Ground,

    /// <summary>The metal shell of the connector.</summary>
    Shell,
}
