using ReworkThermal.Core.Boards;

namespace ReworkThermal.Core.Jobs;

/// <summary>A touch that has begun. It is stored before the tool heats anything, so that an interrupted one is not forgotten.</summary>
/// <param name="Purpose">What the touch is for.</param>
/// <param name="Tools">Tools and their settings, the one in the hand first; at least one.</param>
/// <param name="Pads">Pads the tool is put on, at least one.</param>
/// <param name="Added">Solder put in during the touch, or null.</param>
/// <param name="Side">Face of the board that the tools work on, or null when nobody said.</param>
public sealed record TouchStart(TouchPurpose Purpose, IReadOnlyList<ToolSetting> Tools, IReadOnlyList<PadId> Pads, AddedSolder? Added = null, BoardSide? Side = null);
