using ReworkThermal.Core.Boards;
using UnitsNet;

namespace ReworkThermal.Core.Jobs;

/// <summary>
/// One touch as it happened: what, where, setting, seconds, temperatures. It carries no verdict; what it cost a pad is computed
/// from it whenever it is asked for.
/// </summary>
/// <param name="Purpose">What the touch was for.</param>
/// <param name="Tools">Tools that gave heat, the one in the hand first; at least one.</param>
/// <param name="StartedAt">When contact began.</param>
/// <param name="Dwell">How long contact lasted, zero to one day.</param>
/// <param name="Pads">Pads that were heated, at least one, each once.</param>
/// <param name="Added">Solder put in during the touch, or null.</param>
/// <param name="Mix">Designation of the solder that was in the joint while it was hot, or null for the base solder of the job.</param>
/// <param name="BoardAtStart">Board temperature when contact began, or null when unknown.</param>
/// <param name="Note">What else should be known, or null.</param>
/// <param name="Side">Face of the board that the tools worked on, or null when nobody said.</param>
public sealed record Exposure(
    TouchPurpose Purpose,
    IReadOnlyList<ToolSetting> Tools,
    DateTimeOffset StartedAt,
    Duration Dwell,
    IReadOnlyList<HeatedPad> Pads,
    AddedSolder? Added = null,
    string? Mix = null,
    Temperature? BoardAtStart = null,
    string? Note = null,
    BoardSide? Side = null);
