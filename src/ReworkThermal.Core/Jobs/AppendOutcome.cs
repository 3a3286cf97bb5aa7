namespace ReworkThermal.Core.Jobs;

/// <summary>What came of adding an entry.</summary>
public abstract record AppendOutcome
{
    private AppendOutcome()
    {
    }

    /// <summary>The entry is in the store for good.</summary>
    /// <param name="Entry">The entry as kept.</param>
    public sealed record Written(JobEntry Entry) : AppendOutcome;

    /// <summary>The job has other entries than the caller had seen: read them, judge again, try again.</summary>
    /// <param name="LastNumber">Number of the last entry in the store.</param>
    public sealed record Overtaken(int LastNumber) : AppendOutcome;
}
