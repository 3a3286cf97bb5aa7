namespace ReworkThermal.App.Screens.State;

/// <summary>Lines of the mix, in the order shown.</summary>
internal enum MixField
{
    /// <summary>Joint profile that gives the volume.</summary>
    Joint,

    /// <summary>Board profile that gives the thickness.</summary>
    Board,

    /// <summary>Solder in the joint.</summary>
    BaseSolder,

    /// <summary>Dilution alloy.</summary>
    Alloy,

    /// <summary>Share of the mix that is added [%].</summary>
    SharePercent,

    /// <summary>How solder is taken out.</summary>
    Removal,

    /// <summary>Add-and-wick passes.</summary>
    Passes,

    /// <summary>Alloy of the refitted joint.</summary>
    Refill,
}
