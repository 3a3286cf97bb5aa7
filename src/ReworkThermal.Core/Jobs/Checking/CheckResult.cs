namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>What a probe said.</summary>
public enum CheckResult
{
    /// <summary>As expected.</summary>
    Pass,

    /// <summary>Not as expected.</summary>
    Fail,
}
