using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>What came of reading a list of pins.</summary>
internal abstract record PinListReading
{
    private PinListReading()
    {
    }

    /// <summary>The pins and pads, as events.</summary>
    internal sealed record Accepted(IReadOnlyList<JobEvent> Events) : PinListReading;

    /// <summary>The text cannot be used.</summary>
    internal sealed record Refused(string Reason) : PinListReading;
}
