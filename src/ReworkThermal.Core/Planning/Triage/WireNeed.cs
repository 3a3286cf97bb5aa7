using System.Runtime.Serialization;

namespace ReworkThermal.Core.Planning.Triage;

/// <summary>Whether a pad will need a jumper wire.</summary>
public enum WireNeed
{
    /// <summary>Nothing speaks for it.</summary>
    [EnumMember(Value = "no")]
    No,

    /// <summary>The pad is loose, or the plan uses its budget up.</summary>
    [EnumMember(Value = "possible")]
    Possible,

    /// <summary>The pad is gone.</summary>
    [EnumMember(Value = "certain")]
    Certain,
}
