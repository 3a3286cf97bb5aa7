using ReworkThermal.Core.Boards;

namespace ReworkThermal.Core.Planning;

/// <summary>Knows the tools that settings refer to by name.</summary>
public interface IToolShelf
{
    /// <summary>Turns words into boundary conditions.</summary>
    /// <param name="use">Tools and settings, as they are said.</param>
    /// <param name="site">The joint they work on.</param>
    /// <returns>The boundary conditions and what was assumed, or why there are none.</returns>
    public ToolsOutcome Resolve(ToolUse use, JointSite site);
}
