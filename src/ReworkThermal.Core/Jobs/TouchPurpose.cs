namespace ReworkThermal.Core.Jobs;

/// <summary>What a touch was for.</summary>
public enum TouchPurpose
{
    /// <summary>Melt a dilution alloy into the joint.</summary>
    Mix,

    /// <summary>Take molten solder away with wick or vacuum.</summary>
    Wick,

    /// <summary>Lift the part out.</summary>
    Lift,

    /// <summary>Fill the joint with its final solder.</summary>
    Refill,

    /// <summary>Solder the end of a jumper wire.</summary>
    Wire,

    /// <summary>Warm the board.</summary>
    Preheat,

    /// <summary>Anything else; the note says what.</summary>
    Other,
}
