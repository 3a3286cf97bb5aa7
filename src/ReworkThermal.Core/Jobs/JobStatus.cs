namespace ReworkThermal.Core.Jobs;

/// <summary>Whether work may be recorded.</summary>
public enum JobStatus
{
    /// <summary>Work may be recorded.</summary>
    Open,

    /// <summary>Handed over; it must be reopened before anything is recorded.</summary>
    Closed,
}
