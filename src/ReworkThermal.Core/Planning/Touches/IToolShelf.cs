using ReworkThermal.Core.Boards;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>Knows the tools that settings refer to by name.</summary>
public interface IToolShelf
{
    /// <summary>Turns words into boundary conditions.</summary>
    /// <param name="use">Tools and settings, as they are said.</param>
    /// <param name="site">The joint they work on.</param>
    /// <returns>The boundary conditions and what was assumed, or why there are none.</returns>
    public ToolsOutcome Resolve(ToolUse use, JointSite site);
}

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
