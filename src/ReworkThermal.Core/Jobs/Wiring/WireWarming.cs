using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>How warm a wire gets in the long run, as a range between two simple pictures.</summary>
public abstract record WireWarming
{
    private WireWarming()
    {
    }

    /// <summary>It settles in both pictures.</summary>
    /// <param name="Low">Rise at mid-length of a wire whose soldered ends stay at ambient, insulated, radiating.</param>
    /// <param name="High">Rise of a long bare bright wire in still air, far from its ends.</param>
    public sealed record Settles(TemperatureDelta Low, TemperatureDelta High) : WireWarming;

    /// <summary>Only its cool ends and radiation keep it from melting.</summary>
    /// <param name="Low">Rise at mid-length by the low picture.</param>
    public sealed record Doubtful(TemperatureDelta Low) : WireWarming;

    /// <summary>It melts in both pictures.</summary>
    public sealed record Melts : WireWarming;
}
