using System.Runtime.Serialization;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>What the parameters of a system rest on.</summary>
public enum SystemStatus
{
    /// <summary>A published assessment.</summary>
    [EnumMember(Value = "assessed")]
    Assessed,

    /// <summary>This project's own fit to published points.</summary>
    [EnumMember(Value = "fitted")]
    Fitted,

    /// <summary>Figures remembered but not seen.</summary>
    [EnumMember(Value = "memory")]
    Memory,

    /// <summary>Nothing was found: the elements mix ideally.</summary>
    [EnumMember(Value = "missing")]
    Missing,
}
