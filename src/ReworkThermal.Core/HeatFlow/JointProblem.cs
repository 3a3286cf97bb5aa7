using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Materials;
using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>A joint on its board, its solder, and what the tools do to it.</summary>
public sealed record JointProblem
{
    /// <summary>The joint where it is.</summary>
    public required JointSite Site { get; init; }

    /// <summary>Heat content of the solder in the joint, of the mix when something is mixed in.</summary>
    public required EnthalpyCurve Solder { get; init; }

    /// <summary>Flow temperature of that solder.</summary>
    public required Temperature FlowTemperature { get; init; }

    /// <summary>Superheat that the coldest solder must have over the flow temperature, zero or more.</summary>
    public required TemperatureDelta Superheat { get; init; }

    /// <summary>The room.</summary>
    public required Surroundings Surroundings { get; init; }

    /// <summary>Temperature of everything at the start, unless the board is settled over a preheater.</summary>
    public required Temperature Start { get; init; }

    /// <summary>Heat from below; null for none.</summary>
    public required BottomHeat? Preheat { get; init; }

    /// <summary>What the tools do, in order of time, without overlap.</summary>
    public required IReadOnlyList<Touch> Touches { get; init; }

    /// <summary>Length of the run, above zero; later than the last touch shows the cooling.</summary>
    public required Duration End { get; init; }

    /// <summary>What cannot be about the times, tools and sides of the touches.</summary>
    /// <returns>Null when all is well, else one clause.</returns>
    internal string? Fault()
    {
        if (!double.IsFinite(End.Seconds) || End.Seconds <= 0)
        {
            return "the run must end after 0 s";
        }

        double free = 0;
        for (int i = 0; i < Touches.Count; i++)
        {
            double start = Touches[i].Start.Seconds;
            double span = Touches[i].Span.Seconds;
            if (!double.IsFinite(start) || start < 0 || !double.IsFinite(span) || span <= 0)
            {
                return $"touch {i + 1} must start at 0 s or later and last longer than 0 s";
            }

            if (start < free - 1e-9)
            {
                return $"touch {i + 1} starts before touch {i} ends; touches must follow one another";
            }

            free = start + span;
            if (free > End.Seconds + 1e-9)
            {
                return $"touch {i + 1} ends after the run does";
            }

            if (Touches[i].Tip is null && Touches[i].Jet is null)
            {
                return $"touch {i + 1} names no tool; give it an iron or air";
            }

            if (Touches[i].Tip is not null && Touches[i].Side == BoardSide.Bottom && Site.Joint is SurfaceJoint)
            {
                return $"touch {i + 1} puts an iron on the bottom, but the pad of a surface joint is on the top";
            }
        }

        return double.IsFinite(Superheat.Kelvins) && Superheat.Kelvins >= 0 ? null : "the superheat must be zero or more";
    }
}
