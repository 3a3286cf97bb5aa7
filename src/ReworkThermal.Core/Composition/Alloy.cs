namespace ReworkThermal.Core.Composition;

/// <summary>A solder or dilution alloy that can be bought, by generic composition.</summary>
/// <param name="Name">Designation, unique in its folder, for example <c>Sn96.5Ag3Cu0.5</c>.</param>
/// <param name="Fractions">Composition by mass.</param>
/// <param name="Family">Trade family, for example <c>tin-silver-copper</c>.</param>
/// <param name="Forms">How it is sold: wire, bar, paste, ball.</param>
/// <param name="Melting">Published melting range.</param>
/// <param name="Cautions">What a user must know before touching it, one sentence each.</param>
/// <param name="IsUsual">Whether a plan tries it when a request does not name its alloys; every alloy can be named and ranked.</param>
public sealed record Alloy(
    string Name,
    MassFractions Fractions,
    string Family,
    IReadOnlyList<string> Forms,
    PublishedMelting Melting,
    IReadOnlyList<string> Cautions,
    bool IsUsual = true)
{
    /// <summary>
    /// Greatest lead content of a homogeneous material that still counts as lead-free: 0.1 % by mass (Directive 2011/65/EU, annex II).
    /// </summary>
    public const double MostLeadOfLeadFree = 0.001;

    /// <summary>Whether the alloy itself counts as lead-free.</summary>
    public bool IsLeadFree => Fractions[Element.Pb] <= MostLeadOfLeadFree;
}
