namespace ReworkThermal.Core.Jobs;

/// <summary>What a pad looks like.</summary>
public enum PadState
{
    /// <summary>Bonded to the laminate, nothing to see.</summary>
    Sound,

    /// <summary>Lifted or moving, still attached to its track or barrel.</summary>
    Loose,

    /// <summary>Gone.</summary>
    Missing,

    /// <summary>Replaced or helped by a jumper wire.</summary>
    Wired,
}
