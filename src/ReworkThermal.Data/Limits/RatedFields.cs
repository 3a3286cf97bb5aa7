using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Limits;

/// <summary>Reads figures that carry a support level, and checks that their sources are in the bibliography.</summary>
/// <param name="bibliography">The sources of the folder.</param>
internal sealed class RatedFields(Bibliography bibliography)
{

    /// <summary>A quantity with its range, source, mark and support.</summary>
    internal RatedEstimate<TQuantity> Quantity<TQuantity, TUnit>(FieldReader from, string name, Quantity<TQuantity, TUnit> kind, TQuantity least, TQuantity most)
        where TQuantity : struct, IComparable<TQuantity>
        where TUnit : struct, Enum => Rated(from.Table(name), from.Estimate(name, kind, least, most));

    /// <summary>A plain number with its range, source, mark and support.</summary>
    internal RatedEstimate<double> Number(FieldReader from, string name, double least, double most) =>
        Rated(from.Table(name), from.Estimate(name, least, most));

    /// <summary>The fields <c>source</c> and <c>mark</c>; the source must be known.</summary>
    internal Provenance Provenance(FieldReader from) => Known(from, from.Provenance());

    /// <summary>The field <c>support</c>.</summary>
    internal static SupportLevel Support(FieldReader from) => from.OneOf<SupportLevel>("support");

    private RatedEstimate<T> Rated<T>(FieldReader table, Estimate<T> estimate)
        where T : struct, IComparable<T>
    {
        _ = Known(table, estimate.Provenance);
        return new RatedEstimate<T>(estimate, Support(table));
    }

    private Provenance Known(FieldReader from, Provenance provenance) => bibliography.Cite(provenance.Source) is not null
        ? provenance
        : throw from.Wrong("source", $"names '{BadValue.Shown(provenance.Source)}', which is not in sources.toml; add it there, or write \"judgement, no source\"");
}
