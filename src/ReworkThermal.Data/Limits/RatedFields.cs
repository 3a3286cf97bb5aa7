using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Limits;

/// <summary>Reads figures that carry a support level, and checks that their sources are in the bibliography.</summary>
/// <param name="bibliography">The sources of the folder.</param>
internal sealed class RatedFields(Bibliography bibliography)
{
    private static readonly Dictionary<string, SupportLevel> _supports = new(StringComparer.Ordinal)
    {
        ["supported"] = SupportLevel.Supported,
        ["supported in form"] = SupportLevel.SupportedInForm,
        ["judgement"] = SupportLevel.Judgement,
    };

    /// <summary>A quantity with its range, source, mark and support.</summary>
    internal RatedEstimate<TQuantity> Quantity<TQuantity, TUnit>(FieldReader from, string name, Quantity<TQuantity, TUnit> kind, TQuantity least, TQuantity most)
        where TQuantity : struct, IComparable<TQuantity>
        where TUnit : struct, Enum
    {
        FieldReader table = from.Table(name);
        TQuantity value = table.Quantity("value", kind, least, most);
        TQuantity low = table.Quantity("low", kind, least, most);
        TQuantity high = table.Quantity("high", kind, least, most);
        return Rated(table, value, low, high);
    }

    /// <summary>A plain number with its range, source, mark and support.</summary>
    internal RatedEstimate<double> Number(FieldReader from, string name, double least, double most)
    {
        FieldReader table = from.Table(name);
        return Rated(table, table.Number("value", least, most), table.Number("low", least, most), table.Number("high", least, most));
    }

    /// <summary>The fields <c>source</c> and <c>mark</c>; the source must be known.</summary>
    internal Provenance Provenance(FieldReader from)
    {
        Provenance provenance = from.Provenance();
        return bibliography.Cite(provenance.Source) is not null
            ? provenance
            : throw from.Wrong("source", $"names '{provenance.Source}', which is not in sources.toml; add it there, or write \"judgement, no source\"");
    }

    /// <summary>The field <c>support</c>.</summary>
    internal static SupportLevel Support(FieldReader from) => from.OneOf("support", _supports);

    private RatedEstimate<T> Rated<T>(FieldReader table, T value, T low, T high)
        where T : struct, IComparable<T>
    {
        return low.CompareTo(value) <= 0 && value.CompareTo(high) <= 0
            ? new RatedEstimate<T>(new Estimate<T>(value, low, high, Provenance(table)), Support(table))
            : throw table.Wrong("value", "must lie between low and high");
    }
}
