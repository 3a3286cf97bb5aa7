namespace ReworkThermal.Core.Jobs;

/// <summary>Whether an event may be the next of a job.</summary>
public abstract record EventVerdict
{
    private EventVerdict()
    {
    }

    /// <summary>It may.</summary>
    public sealed record Accepted : EventVerdict;

    /// <summary>It may not.</summary>
    /// <param name="Reason">One sentence: what is wrong and what would be right.</param>
    public sealed record Refused(string Reason) : EventVerdict;
}
