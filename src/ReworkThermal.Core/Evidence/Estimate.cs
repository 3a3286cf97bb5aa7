namespace ReworkThermal.Core.Evidence;

/// <summary>A number that is not known exactly: central value, range and provenance.</summary>
/// <typeparam name="T">The quantity, with its unit in the type (a UnitsNet quantity) or a plain ratio.</typeparam>
/// <param name="Central">Value used when nothing better is known.</param>
/// <param name="Low">Lower end of the plausible range, not above <paramref name="Central"/>.</param>
/// <param name="High">Upper end of the plausible range, not below <paramref name="Central"/>.</param>
/// <param name="Provenance">Where the numbers come from.</param>
public sealed record Estimate<T>(T Central, T Low, T High, Provenance Provenance)
    where T : struct;
