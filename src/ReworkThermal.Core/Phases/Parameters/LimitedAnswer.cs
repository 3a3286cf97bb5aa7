namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>What may still be said of an alloy beyond the limit of a system.</summary>
public enum LimitedAnswer
{
    /// <summary>Everything, with a wider uncertainty and a caveat.</summary>
    Wider,

    /// <summary>Where melting begins, but not where it ends.</summary>
    SolidusOnly,

    /// <summary>Nothing.</summary>
    None,
}
