namespace ReworkThermal.Core.HeatFlow;

/// <summary>What came of a heat-flow run.</summary>
public abstract record HeatOutcome
{
    private HeatOutcome()
    {
    }

    /// <summary>The run reached its end.</summary>
    /// <param name="Run">Its results.</param>
    public sealed record Completed(HeatRun Run) : HeatOutcome;

    /// <summary>The problem cannot be: a time, length or coefficient of it contradicts another, or is out of range.</summary>
    /// <param name="Rule">One clause: what would be right.</param>
    public sealed record Impossible(string Rule) : HeatOutcome;

    /// <summary>No step, however short, could be solved from some time on.</summary>
    /// <param name="Reason">One sentence with the time.</param>
    public sealed record NotConverged(string Reason) : HeatOutcome;
}
