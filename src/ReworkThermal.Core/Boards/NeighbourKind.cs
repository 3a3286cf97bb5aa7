namespace ReworkThermal.Core.Boards;

/// <summary>Kinds of part near a joint that heat can hurt.</summary>
public enum NeighbourKind
{
    /// <summary>Plastic of a connector: softens.</summary>
    ConnectorPlastic,

    /// <summary>Electrolytic capacitor: boils or dries out.</summary>
    ElectrolyticCapacitor,

    /// <summary>Ceramic capacitor: cracks under a steep gradient or a fast ramp.</summary>
    CeramicCapacitor,

    /// <summary>Anything else with a temperature limit.</summary>
    Other,
}
