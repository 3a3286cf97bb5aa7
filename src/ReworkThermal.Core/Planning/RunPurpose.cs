namespace ReworkThermal.Core.Planning;

/// <summary>What a simulated touch is for, which sets how finely it is computed.</summary>
internal enum RunPurpose
{
    /// <summary>To sort out settings; whatever is chosen is run again.</summary>
    Screening,

    /// <summary>To stand in a plan.</summary>
    Plan,
}
