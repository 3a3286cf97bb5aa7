using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Damage;

/// <summary>A number of the damage model with its range, its source, and how far the literature supports it for this use.</summary>
/// <typeparam name="T">The quantity, or a plain ratio.</typeparam>
/// <param name="Estimate">Central value, range and provenance.</param>
/// <param name="Support">How far the literature carries it.</param>
public sealed record RatedEstimate<T>(Estimate<T> Estimate, SupportLevel Support)
    where T : struct
{
    /// <summary>Central value.</summary>
    public T Central => Estimate.Central;

    /// <summary>Lower end of the range.</summary>
    public T Low => Estimate.Low;

    /// <summary>Upper end of the range.</summary>
    public T High => Estimate.High;
}
