using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Exposures;

/// <summary>
/// An assumption about the heat a pad had before anything was logged. The favourable end is <paramref name="AtLeast"/>, the centre
/// adds <paramref name="LikelyMore"/>, the unfavourable end adds <paramref name="AtMostMore"/> as well.
/// </summary>
/// <param name="Name">Short name, for example <c>sound</c>.</param>
/// <param name="Description">What is assumed, in words.</param>
/// <param name="AtLeast">Steps that are taken for granted.</param>
/// <param name="LikelyMore">Further steps that are likely.</param>
/// <param name="AtMostMore">Further steps that are possible.</param>
/// <param name="CopperLost">Copper already dissolved from the knee or land [m].</param>
/// <param name="Provenance">Where the assumption comes from.</param>
/// <param name="Support">How far the literature carries it.</param>
public sealed record PriorHeat(
    string Name,
    string Description,
    IReadOnlyList<PriorStep> AtLeast,
    IReadOnlyList<PriorStep> LikelyMore,
    IReadOnlyList<PriorStep> AtMostMore,
    RatedEstimate<Length> CopperLost,
    Provenance Provenance,
    SupportLevel Support);

/// <summary>One steady step of assumed earlier heat.</summary>
/// <param name="Temperature">Interface temperature [°C].</param>
/// <param name="Time">How long [s], not negative.</param>
/// <param name="Melts">Whether the joint melted.</param>
/// <param name="Region">How much of the board was hot.</param>
public sealed record PriorStep(Temperature Temperature, Duration Time, bool Melts, HeatedRegion Region);
