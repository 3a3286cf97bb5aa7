namespace ReworkThermal.Core.Planning.Triage;

/// <summary>Whether a pad will need a jumper wire.</summary>
public enum WireNeed
{
    /// <summary>Nothing speaks for it.</summary>
    No,

    /// <summary>The pad is loose, or the plan uses its budget up.</summary>
    Possible,

    /// <summary>The pad is gone.</summary>
    Certain,
}
