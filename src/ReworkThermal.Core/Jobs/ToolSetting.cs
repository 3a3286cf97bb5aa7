using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Jobs;

/// <summary>How a tool was set while it gave heat, as the technician reads it off the tool.</summary>
public abstract record ToolSetting
{
    private ToolSetting(string? profile, Temperature set)
    {
        Profile = profile;
        Set = set;
    }

    /// <summary>Name of the tool's profile, or null when none was chosen.</summary>
    public string? Profile { get; }

    /// <summary>Set temperature.</summary>
    public Temperature Set { get; }

    /// <summary>A soldering iron, and how its tip met the joint; null when nobody said.</summary>
    public sealed record Iron(string? Profile, Temperature Set, ContactState? Contact = null) : ToolSetting(Profile, Set);

    /// <summary>A hot-air tool with its volume flow, and the distance of nozzle and board; null when nobody said.</summary>
    public sealed record HotAir(string? Profile, Temperature Set, VolumeFlow Flow, Length? Distance = null) : ToolSetting(Profile, Set);

    /// <summary>A heater under the board.</summary>
    public sealed record Preheater(string? Profile, Temperature Set) : ToolSetting(Profile, Set);

    /// <summary>A fountain or bath of molten solder: an open supply that never saturates with copper.</summary>
    public sealed record Bath(string? Profile, Temperature Set) : ToolSetting(Profile, Set);
}
