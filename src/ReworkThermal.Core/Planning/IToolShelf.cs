using ReworkThermal.Core.Boards;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

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
