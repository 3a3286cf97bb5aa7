using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Composition;

/// <summary>Melting range of an alloy as somebody else published it; shown beside the computed one, never used instead of it.</summary>
/// <param name="Solidus">Temperature at which melting begins.</param>
/// <param name="Liquidus">Temperature at which the last solid is gone, not below <paramref name="Solidus"/>.</param>
/// <param name="Provenance">Where the figures come from.</param>
/// <param name="Note">What to know before comparing; may be empty.</param>
/// <param name="IsArrest">
/// Whether the printed figure is one arrest of a heating curve, near a ternary eutectic as a rule, and not the end of melting.
/// </param>
public sealed record PublishedMelting(Temperature Solidus, Temperature Liquidus, Provenance Provenance, string Note, bool IsArrest = false);
