namespace ReworkThermal.Core.Jobs;

/// <summary>What came of recording an event.</summary>
public abstract record RecordOutcome
{
    private RecordOutcome()
    {
    }

    /// <summary>It is in the record.</summary>
    /// <param name="Entry">The entry.</param>
    /// <param name="State">The job with it.</param>
    public sealed record Recorded(JobEntry Entry, JobState State) : RecordOutcome;

    /// <summary>It does not fit the job.</summary>
    /// <param name="Reason">One sentence: what is wrong and what would be right.</param>
    public sealed record Refused(string Reason) : RecordOutcome;

    /// <summary>There is no such job in this store.</summary>
    public sealed record NoSuchJob : RecordOutcome;
}
