using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>How tools give heat in a touch, in the words of the record; what is null was not said.</summary>
/// <param name="Tools">Tools and settings.</param>
/// <param name="BoardAtStart">Board temperature when contact began.</param>
/// <param name="Side">Face of the board that the tools work on.</param>
public sealed record ToolUse(IReadOnlyList<Jobs.ToolSetting> Tools, Temperature? BoardAtStart = null, BoardSide? Side = null)
{
    /// <summary>How the tools of a logged touch were used.</summary>
    /// <param name="touch">The touch.</param>
    /// <returns>The use.</returns>
    public static ToolUse Of(Exposure touch)
    {
        ArgumentNullException.ThrowIfNull(touch);
        return new ToolUse(touch.Tools, touch.BoardAtStart, touch.Side);
    }
}
