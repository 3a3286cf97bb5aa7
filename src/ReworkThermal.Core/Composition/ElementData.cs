namespace ReworkThermal.Core.Composition;

/// <summary>Constants of the modelled elements.</summary>
public static class ElementData
{
    /// <summary>Number of modelled elements; the length of every composition vector.</summary>
    public const int Count = 9;

    // Standard atomic weights, g/mol: IUPAC Commission on Isotopic Abundances and Atomic Weights, 2021 table
    // (abridged values; lead and tin as conventional values). Order of the enumeration.
    private static readonly double[] _molarMass = [107.87, 196.97, 208.98, 63.546, 114.82, 207.2, 121.76, 118.71, 65.38];

    /// <summary>All modelled elements in index order.</summary>
    public static IReadOnlyList<Element> All { get; } =
        [Element.Ag, Element.Au, Element.Bi, Element.Cu, Element.In, Element.Pb, Element.Sb, Element.Sn, Element.Zn];

    /// <summary>Symbols of all modelled elements, for sentences.</summary>
    public static string Symbols { get; } = string.Join(", ", All.SkipLast(1).Select(e => e.Symbol())) + " and " + All[^1].Symbol();

    /// <summary>Molar mass of an element [g/mol] (IUPAC 2021 abridged atomic weights).</summary>
    /// <param name="element">The element.</param>
    /// <returns>Molar mass in g/mol.</returns>
    public static double GramsPerMole(this Element element) => _molarMass[(int)element];

    /// <summary>Chemical symbol of an element.</summary>
    /// <param name="element">The element.</param>
    /// <returns>For example <c>Sn</c>.</returns>
    public static string Symbol(this Element element) => element switch
    {
        Element.Ag => "Ag",
        Element.Au => "Au",
        Element.Bi => "Bi",
        Element.Cu => "Cu",
        Element.In => "In",
        Element.Pb => "Pb",
        Element.Sb => "Sb",
        Element.Sn => "Sn",
        Element.Zn => "Zn",
        _ => throw new ArgumentOutOfRangeException(nameof(element)),
    };

    /// <summary>Finds a modelled element by its symbol, in any letter case.</summary>
    /// <param name="symbol">For example <c>Sn</c> or <c>SN</c>.</param>
    /// <param name="element">The element found.</param>
    /// <returns>Whether the symbol names a modelled element.</returns>
    public static bool TryParseSymbol(string symbol, out Element element)
    {
        foreach (Element candidate in All)
        {
            if (string.Equals(candidate.Symbol(), symbol, StringComparison.OrdinalIgnoreCase))
            {
                element = candidate;
                return true;
            }
        }

        element = default;
        return false;
    }
}
