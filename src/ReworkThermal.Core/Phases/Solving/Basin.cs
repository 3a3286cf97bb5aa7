namespace ReworkThermal.Core.Phases.Solving;

/// <summary>A local minimum of a phase over a tangent plane, kept to start the next search from.</summary>
/// <param name="model">The phase.</param>
/// <param name="y">Site fractions at the minimum; updated in place.</param>
internal sealed class Basin(PhaseModel model, double[] y)
{
    internal PhaseModel Model { get; } = model;

    internal double[] Y { get; } = y;

    /// <summary>Height over the plane [R T]; negative when the phase would form.</summary>
    internal double Height { get; set; }
}
