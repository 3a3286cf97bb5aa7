using System.Runtime.Serialization;

namespace ReworkThermal.Core.Jobs;

/// <summary>What a pad looks like.</summary>
public enum PadState
{
    /// <summary>Bonded to the laminate, nothing to see.</summary>
    [EnumMember(Value = "sound")]
    Sound,

    /// <summary>Lifted or moving, still attached to its track or barrel.</summary>
    [EnumMember(Value = "loose")]
    Loose,

    /// <summary>Gone.</summary>
    [EnumMember(Value = "missing")]
    Missing,

    /// <summary>Replaced or helped by a jumper wire.</summary>
    [EnumMember(Value = "wired")]
    Wired,
}
