namespace ReworkThermal.Core.Damage;

/// <summary>What went before an exposure.</summary>
public enum ExposureStart
{
    /// <summary>The joint had frozen and the board had cooled: a melt or an expansion now is a new one.</summary>
    AfterCooling,

    /// <summary>The exposure follows straight on the one before: a melt or an expansion that was going on is the same one.</summary>
    StraightOn,
}
