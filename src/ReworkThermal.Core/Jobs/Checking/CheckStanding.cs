namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>Where a check stands now.</summary>
public enum CheckStanding
{
    /// <summary>Never probed.</summary>
    Open,

    /// <summary>Probed, but a pin it concerns was worked on afterwards: must be probed again.</summary>
    Stale,

    /// <summary>Probed and as expected.</summary>
    Passed,

    /// <summary>Probed and not as expected.</summary>
    Failed,
}
