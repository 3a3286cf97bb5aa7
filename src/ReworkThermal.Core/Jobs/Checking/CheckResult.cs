using System.Runtime.Serialization;

namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>What a probe said.</summary>
public enum CheckResult
{
    /// <summary>As expected.</summary>
    [EnumMember(Value = "pass")]
    Pass,

    /// <summary>Not as expected.</summary>
    [EnumMember(Value = "fail")]
    Fail,
}
