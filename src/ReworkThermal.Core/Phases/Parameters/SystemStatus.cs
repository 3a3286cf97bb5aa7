namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>What the parameters of a system rest on.</summary>
public enum SystemStatus
{
    /// <summary>A published assessment.</summary>
    Assessed,

    /// <summary>This project's own fit to published points.</summary>
    Fitted,

    /// <summary>Figures remembered but not seen.</summary>
    Memory,

    /// <summary>Nothing was found: the elements mix ideally.</summary>
    Missing,
}
