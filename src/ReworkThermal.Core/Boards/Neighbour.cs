using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>A part near the joint, with its own limits.</summary>
public sealed record Neighbour
{
    /// <summary>Name for reports, for example <c>C12</c>.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required NeighbourKind Kind { get; init; }

    /// <summary>Distance of its near edge from the centre of the joint, above zero.</summary>
    public required Length Distance
    {
        get;
        init => field = Dimension.Positive(value, "distance");
    }

    /// <summary>Its extent away from the joint, above zero; the gradient limit is taken over it.</summary>
    public required Length Extent
    {
        get;
        init => field = Dimension.Positive(value, "extent");
    }

    /// <summary>Face it sits on.</summary>
    public required BoardSide Side { get; init; }

    /// <summary>Highest temperature it bears; null when none is stated.</summary>
    public required Estimate<Temperature>? MostTemperature { get; init; }

    /// <summary>Largest temperature difference over its extent; null when none is stated.</summary>
    public required Estimate<TemperatureDelta>? MostDifference { get; init; }

    /// <summary>Fastest heating; null when none is stated.</summary>
    public required Estimate<TemperatureChangeRate>? MostRate { get; init; }
}
