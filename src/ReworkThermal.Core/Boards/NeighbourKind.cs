using System.Runtime.Serialization;

namespace ReworkThermal.Core.Boards;

/// <summary>Kinds of part near a joint that heat can hurt.</summary>
public enum NeighbourKind
{
    /// <summary>Plastic of a connector: softens.</summary>
    [EnumMember(Value = "connector-plastic")]
    ConnectorPlastic,

    /// <summary>Electrolytic capacitor: boils or dries out.</summary>
    [EnumMember(Value = "electrolytic-capacitor")]
    ElectrolyticCapacitor,

    /// <summary>Ceramic capacitor: cracks under a steep gradient or a fast ramp.</summary>
    [EnumMember(Value = "ceramic-capacitor")]
    CeramicCapacitor,

    /// <summary>Anything else with a temperature limit.</summary>
    [EnumMember(Value = "other")]
    Other,
}
