using ReworkThermal.Core.Boards;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>Knows the tools that settings refer to by name.</summary>
public interface IToolShelf
{
    /// <summary>Turns logged settings into boundary conditions.</summary>
    /// <param name="tools">Tools and settings as logged.</param>
    /// <param name="boardAtStart">Board temperature when contact began; null when unknown.</param>
    /// <param name="board">The board they worked on.</param>
    /// <returns>The boundary conditions, or why there are none.</returns>
    public ToolsOutcome Resolve(IReadOnlyList<Jobs.ToolSetting> tools, Temperature? boardAtStart, Board board);
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
