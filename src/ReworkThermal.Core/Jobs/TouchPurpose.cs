using System.Runtime.Serialization;

namespace ReworkThermal.Core.Jobs;

/// <summary>What a touch was for.</summary>
public enum TouchPurpose
{
    /// <summary>Melt a dilution alloy into the joint.</summary>
    [EnumMember(Value = "mix")]
    Mix,

    /// <summary>Take molten solder away with wick or vacuum.</summary>
    [EnumMember(Value = "wick")]
    Wick,

    /// <summary>Lift the part out.</summary>
    [EnumMember(Value = "lift")]
    Lift,

    /// <summary>Fill the joint with its final solder.</summary>
    [EnumMember(Value = "refill")]
    Refill,

    /// <summary>Solder the end of a jumper wire.</summary>
    [EnumMember(Value = "wire")]
    Wire,

    /// <summary>Warm the board.</summary>
    [EnumMember(Value = "preheat")]
    Preheat,

    /// <summary>Anything else; the note says what.</summary>
    [EnumMember(Value = "other")]
    Other,
}
