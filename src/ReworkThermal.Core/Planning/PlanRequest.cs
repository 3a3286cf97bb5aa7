using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Planning.Pads;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Uncertainty;

namespace ReworkThermal.Core.Planning;

/// <summary>
/// What a technician asks: one joint, what is in it, what shall be in it afterwards, what is on the bench, and which limits hold.
/// Start reading this room here; PlanSearch answers it.
/// </summary>
public sealed record PlanRequest
{
    /// <summary>What the request calls itself.</summary>
    public required string Title { get; init; }

    /// <summary>Name of the model of board: its profile.</summary>
    public required string BoardName { get; init; }

    /// <summary>Name of the joint.</summary>
    public required string JointName { get; init; }

    /// <summary>The joint on its board.</summary>
    public required JointSite Site { get; init; }

    /// <summary>Side of the board that the iron touches.</summary>
    public required BoardSide Side { get; init; }

    /// <summary>Solder that is in the joint now.</summary>
    public required NamedSolder BaseSolder { get; init; }

    /// <summary>Solder that the joint shall be refitted with.</summary>
    public required NamedSolder Refill { get; init; }

    /// <summary>Tools and alloys.</summary>
    public required Bench Bench { get; init; }

    /// <summary>Limits.</summary>
    public required PlanLimits Limits { get; init; }

    /// <summary>Assumed heat that the pad had before this job.</summary>
    public required PriorHeat Prior { get; init; }

    /// <summary>
    /// The pad with its logged touches; null when none are known, and <see cref="Prior"/> stands alone. It must belong to the joint of the
    /// request.
    /// </summary>
    public PadAccount? Pad { get; init; }

    /// <summary>How far one bench differs from the next.</summary>
    public required BenchScatter Scatter { get; init; }

    /// <summary>What timed touches on this model of board have taught; null when there is nothing yet.</summary>
    public BenchCalibration? Calibration { get; init; }

    /// <summary>Advice that goes with every plan, one sentence each.</summary>
    public required IReadOnlyList<string> Advice { get; init; }

    /// <summary>What the reader assumed because the request did not say it, one sentence each.</summary>
    public required IReadOnlyList<string> Assumed { get; init; }
}
