using System.Runtime.Serialization;

namespace ReworkThermal.Core.Jobs.Pins;

/// <summary>How a board treats the metal shell of a connector.</summary>
public enum ShieldBond
{
    /// <summary>Joined to ground: shell pins conduct to ground.</summary>
    [EnumMember(Value = "grounded")]
    Grounded,

    /// <summary>Kept apart from ground for direct current, for example behind a capacitor: shell pins conduct to the shell only.</summary>
    [EnumMember(Value = "separate")]
    Separate,
}
