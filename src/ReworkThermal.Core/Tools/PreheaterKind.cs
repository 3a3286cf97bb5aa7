using System.Runtime.Serialization;

namespace ReworkThermal.Core.Tools;

/// <summary>How a preheater gives its heat to the underside of the board.</summary>
public enum PreheaterKind
{
    /// <summary>The board lies on a hot plate.</summary>
    [EnumMember(Value = "hot-plate")]
    HotPlate,

    /// <summary>Warm air from below.</summary>
    [EnumMember(Value = "bottom-air")]
    BottomAir,

    /// <summary>An infrared emitter below the board.</summary>
    [EnumMember(Value = "infrared")]
    Infrared,
}
