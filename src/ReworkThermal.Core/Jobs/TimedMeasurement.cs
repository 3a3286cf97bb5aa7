using UnitsNet;

namespace ReworkThermal.Core.Jobs;

/// <summary>Something timed at the bench that tells how this board takes heat.</summary>
public abstract record TimedMeasurement
{
    private TimedMeasurement(PadId pad, IReadOnlyList<ToolSetting> tools, Temperature? boardAtStart)
    {
        Pad = pad;
        Tools = tools;
        BoardAtStart = boardAtStart;
    }

    /// <summary>The pad the tool was on.</summary>
    public PadId Pad { get; }

    /// <summary>Tools and their settings, the one in the hand first; at least one.</summary>
    public IReadOnlyList<ToolSetting> Tools { get; }

    /// <summary>Board temperature when contact began, or null when unknown.</summary>
    public Temperature? BoardAtStart { get; }

    /// <summary>The solder was seen to flow through after this time.</summary>
    public sealed record Flow(PadId Pad, IReadOnlyList<ToolSetting> Tools, Temperature? BoardAtStart, Duration TimeToFlow)
        : TimedMeasurement(Pad, Tools, BoardAtStart);

    /// <summary>The solder flowed at some time within this time, after which the tool came off; nobody timed it closer.</summary>
    public sealed record FlowedWithin(PadId Pad, IReadOnlyList<ToolSetting> Tools, Temperature? BoardAtStart, Duration Within)
        : TimedMeasurement(Pad, Tools, BoardAtStart);

    /// <summary>The solder did not flow within this time, after which the tool came off.</summary>
    public sealed record NotFlowed(PadId Pad, IReadOnlyList<ToolSetting> Tools, Temperature? BoardAtStart, Duration Within)
        : TimedMeasurement(Pad, Tools, BoardAtStart);

    /// <summary>A probe at a named place showed a temperature this long after contact began.</summary>
    public sealed record Reading(
        PadId Pad,
        IReadOnlyList<ToolSetting> Tools,
        Temperature? BoardAtStart,
        string Place,
        Duration After,
        Temperature Shown)
        : TimedMeasurement(Pad, Tools, BoardAtStart);

    /// <summary>A probe at a named place was recorded.</summary>
    public sealed record Trace(
        PadId Pad,
        IReadOnlyList<ToolSetting> Tools,
        Temperature? BoardAtStart,
        string Place,
        InterfaceSeries Series)
        : TimedMeasurement(Pad, Tools, BoardAtStart);
}
