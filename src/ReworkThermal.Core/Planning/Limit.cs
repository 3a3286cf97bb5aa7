using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Planning;

/// <summary>A limit that a plan keeps, and where it comes from.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="Value">The limit itself.</param>
/// <param name="Provenance">Where it comes from; "the request" when the user set it.</param>
/// <param name="Note">Why it is what it is; may be empty.</param>
public sealed record Limit<T>(T Value, Provenance Provenance, string Note)
    where T : struct
{
    /// <summary>Source name of a limit that stands in the request.</summary>
    public const string RequestSource = "the request";
}
