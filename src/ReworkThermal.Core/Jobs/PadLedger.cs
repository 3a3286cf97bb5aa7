using ReworkThermal.Core.Jobs.Pins;

namespace ReworkThermal.Core.Jobs;

/// <summary>Everything known about one pad of a job.</summary>
/// <param name="Pad">The pad.</param>
/// <param name="Pin">The connector pin it belongs to, or null when it is a pad of its own.</param>
/// <param name="Description">Text for a pad of its own, or null for a pin.</param>
/// <param name="AsArrived">State seen before the first exposure of this pad, or null when nobody looked.</param>
/// <param name="State">State seen last (or <see cref="PadState.Wired"/> after a wire), or null when nobody looked.</param>
/// <param name="Prior">Assumption about heat before arrival, or null when nobody stated one.</param>
/// <param name="Heats">Exposures that count, by the time they began.</param>
/// <param name="Joint">Name of the joint profile it is judged as, or null for that of the job.</param>
public sealed record PadLedger(
    PadId Pad,
    Pin? Pin,
    string? Description,
    PadState? AsArrived,
    PadState? State,
    PriorCondition? Prior,
    IReadOnlyList<PadHeat> Heats,
    string? Joint = null);
