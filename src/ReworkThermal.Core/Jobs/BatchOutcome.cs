namespace ReworkThermal.Core.Jobs;

/// <summary>What came of adding many entries at once.</summary>
public abstract record BatchOutcome
{
    private BatchOutcome()
    {
    }

    /// <summary>All entries are in the store for good.</summary>
    /// <param name="Count">How many.</param>
    public sealed record Written(int Count) : BatchOutcome;

    /// <summary>A job has other entries than the caller had seen; nothing was added.</summary>
    /// <param name="Job">The first such job.</param>
    public sealed record Overtaken(JobId Job) : BatchOutcome;
}
