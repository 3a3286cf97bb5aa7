namespace ReworkThermal.Core.Planning;

/// <summary>What came of turning logged tool settings into boundary conditions.</summary>
public abstract record ToolsOutcome
{
    private ToolsOutcome()
    {
    }

    /// <summary>The settings can be simulated.</summary>
    /// <param name="Tools">The boundary conditions.</param>
    public sealed record Ready(TouchTools Tools) : ToolsOutcome;

    /// <summary>They cannot.</summary>
    /// <param name="Reason">One clause: what is wrong and what would be right.</param>
    public sealed record Refused(string Reason) : ToolsOutcome;
}
