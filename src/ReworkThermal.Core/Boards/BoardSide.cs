using System.Runtime.Serialization;

namespace ReworkThermal.Core.Boards;

/// <summary>A face of the board.</summary>
public enum BoardSide
{
    /// <summary>The face the technician works on: layer 1.</summary>
    [EnumMember(Value = "top")]
    Top,

    /// <summary>The other face: the last layer.</summary>
    [EnumMember(Value = "bottom")]
    Bottom,
}
