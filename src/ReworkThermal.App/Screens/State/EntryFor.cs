using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.State;

/// <summary>What a text being typed is for.</summary>
internal abstract record EntryFor
{
    private EntryFor()
    {
    }

    /// <summary>The label of a new job.</summary>
    internal sealed record NewJob : EntryFor;

    /// <summary>A line of the job's brief.</summary>
    internal sealed record Brief(BriefField Field) : EntryFor;

    /// <summary>Pins or pads to add.</summary>
    internal sealed record Pins : EntryFor;

    /// <summary>Words that pins must contain to be shown.</summary>
    internal sealed record Filter : EntryFor;

    /// <summary>A note about a pad, or about the job.</summary>
    internal sealed record Note(PadId? Pad) : EntryFor;

    /// <summary>Why an entry is void.</summary>
    internal sealed record VoidReason(int Number) : EntryFor;

    /// <summary>How long an interrupted touch was.</summary>
    internal sealed record TouchSeconds(Logged<TouchStart> Touch) : EntryFor;

    /// <summary>Why an interrupted touch gave no heat.</summary>
    internal sealed record DropReason(Logged<TouchStart> Touch) : EntryFor;

    /// <summary>A line of the mix.</summary>
    internal sealed record Mix(MixField Field) : EntryFor;

    /// <summary>A line of the plan request.</summary>
    internal sealed record Plan(PlanField Field) : EntryFor;

    /// <summary>A setting of the tools in use.</summary>
    internal sealed record Tool(ToolField Field) : EntryFor;

    /// <summary>Where to write the record.</summary>
    internal sealed record ExportPath : EntryFor;

    /// <summary>Where to write all jobs when the store cannot be written; with the text that waits meanwhile.</summary>
    internal sealed record StorePath(TextEntry? Waits) : EntryFor;

    /// <summary>A meter reading for the check that was chosen.</summary>
    internal sealed record Reading(Core.Jobs.Checking.ElectricalCheck Check) : EntryFor;
}
