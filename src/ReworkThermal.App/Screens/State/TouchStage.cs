using ReworkThermal.App.Screens.Update;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.State;

/// <summary>Where a touch stands.</summary>
internal abstract record TouchStage
{
    private TouchStage()
    {
    }

    /// <summary>No touch runs.</summary>
    internal sealed record Ready : TouchStage;

    /// <summary>A tool is on.</summary>
    /// <param name="Since">When it was put on.</param>
    /// <param name="Start">What the touch is.</param>
    /// <param name="Entry">Number of the store's entry, or null until it answers.</param>
    /// <param name="FlowedAt">When the technician saw the solder flow, or null.</param>
    /// <param name="Rung">Bells rung: 0, 1 at the dwell, 2 at the stop.</param>
    internal sealed record Running(Moment Since, TouchStart Start, int? Entry, TimeSpan? FlowedAt, int Rung) : TouchStage;

    /// <summary>The tool is off, and the touch is on its way into the record.</summary>
    /// <param name="Touch">The touch.</param>
    /// <param name="Length">How long it was.</param>
    /// <param name="Note">What else the record should know, or null.</param>
    /// <param name="Handed">What the simulation handed over while the store had not yet kept the start; null otherwise.</param>
    internal sealed record Released(Running Touch, TimeSpan Length, string? Note = null, Message.RunReleased? Handed = null) : TouchStage;

    /// <summary>The touch is in the record; one question is open.</summary>
    /// <param name="Touch">The touch.</param>
    /// <param name="Length">How long it was.</param>
    /// <param name="Off">When the tool came off.</param>
    /// <param name="AsksFlow">Whether it is still to be said if the solder flowed.</param>
    internal sealed record Cooling(Running Touch, TimeSpan Length, Moment Off, bool AsksFlow) : TouchStage;
}
