using ReworkThermal.Core.Jobs;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Makes what the record keeps of a touch: the same while it runs, to say what it would cost, and when it is over.</summary>
internal static class FinishedTouch
{
    /// <summary>A touch as the record keeps it.</summary>
    /// <param name="start">What it was.</param>
    /// <param name="startedAt">When contact began.</param>
    /// <param name="dwell">How long it lasted.</param>
    /// <param name="known">What the simulation knows, or null.</param>
    /// <param name="sawFlow">Whether the technician saw the solder flow.</param>
    /// <param name="note">What else the record should know, or null.</param>
    internal static Exposure Of(TouchStart start, DateTimeOffset startedAt, Duration dwell, BenchRelease? known, bool sawFlow, string? note = null)
    {
        InterfaceSeries? series = known is null ? null : InterfaceSeries.Simulated(known.Interface);
        return new Exposure(
            start.Purpose,
            known?.Use.Tools ?? start.Tools,
            startedAt,
            dwell,
            [.. start.Pads.Select(p => new HeatedPad(p, Touched: true, sawFlow ? true : known?.Melted, series))],
            start.Added,
            BoardAtStart: BoardHeld(start.Tools),
            Note: note,
            Side: known?.Use.Side ?? start.Side);
    }

    /// <summary>Temperature that the preheater holds the board at, as set on the clock; null without one.</summary>
    internal static Temperature? BoardHeld(IReadOnlyList<ToolSetting> tools) => tools.OfType<ToolSetting.Preheater>().FirstOrDefault()?.Set;
}
