namespace ReworkThermal.Core.Evidence;

/// <summary>How well a number is supported. Every number in a data file carries one of these marks.</summary>
public enum EvidenceMark
{
    /// <summary>The figure was read in the named source.</summary>
    Seen,

    /// <summary>A secondary source reports what the named source says.</summary>
    SecondHand,

    /// <summary>Computed from a named formula and named inputs.</summary>
    Computed,

    /// <summary>Well known, but written down from memory and not checked against the source.</summary>
    Memory,

    /// <summary>Chosen by the authors of this project; no source.</summary>
    Judgement,

    /// <summary>Common practice, no source.</summary>
    Practice,
}
