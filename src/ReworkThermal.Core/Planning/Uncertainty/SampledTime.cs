using UnitsNet;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>A quantile of sampled times to flow.</summary>
public abstract record SampledTime
{
    private SampledTime()
    {
    }

    /// <summary>The time itself.</summary>
    /// <param name="Value">Time to flow.</param>
    public sealed record At(Duration Value) : SampledTime;

    /// <summary>The sampled benches were not followed that long.</summary>
    /// <param name="Followed">Time after which they were given up.</param>
    public sealed record LaterThan(Duration Followed) : SampledTime;
}
