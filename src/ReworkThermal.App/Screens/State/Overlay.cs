namespace ReworkThermal.App.Screens.State;

/// <summary>What lies over the place and takes the keys until it is put away.</summary>
internal enum Overlay
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Keys and words of the place.</summary>
    Help,

    /// <summary>The cautions.</summary>
    Cautions,

    /// <summary>Whether to leave the program.</summary>
    Leave,

    /// <summary>Whether to replace a record that was written before.</summary>
    ReplaceRecord,
}
