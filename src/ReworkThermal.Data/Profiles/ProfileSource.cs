using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Profiles;

/// <summary>
/// One profile file being read: its fields, and the bibliography its sources are looked up in. Every estimate must name a source
/// that the bibliography knows, or say that there is none.
/// </summary>
internal sealed class ProfileSource(FieldReader fields, Bibliography bibliography)
{
    /// <summary>The fields of this table.</summary>
    internal FieldReader Fields { get; } = fields;

    /// <summary>A table inside this one.</summary>
    internal ProfileSource Table(string name) => new(Fields.Table(name), bibliography);

    /// <summary>A list of tables inside this one.</summary>
    internal IEnumerable<ProfileSource> Tables(string name) => Fields.Tables(name).Select(t => new ProfileSource(t, bibliography));

    /// <summary>Required estimate of a quantity.</summary>
    internal Estimate<TQuantity> Estimate<TQuantity, TUnit>(string name, Quantity<TQuantity, TUnit> kind, TQuantity? least = null, TQuantity? most = null)
        where TQuantity : struct, IComparable<TQuantity>
        where TUnit : struct, Enum
    {
        Estimate<TQuantity> estimate = Fields.Estimate(name, kind, least, most);
        RequireKnown(Fields, name, estimate.Provenance);
        return estimate;
    }

    /// <summary>Estimate of a quantity, null when the field is absent.</summary>
    internal Estimate<TQuantity>? EstimateOrNull<TQuantity, TUnit>(string name, Quantity<TQuantity, TUnit> kind, TQuantity? least = null, TQuantity? most = null)
        where TQuantity : struct, IComparable<TQuantity>
        where TUnit : struct, Enum => Fields.Has(name) ? Estimate(name, kind, least, most) : null;

    /// <summary>Required estimate of a plain number.</summary>
    internal Estimate<double> Estimate(string name, double least = double.NegativeInfinity, double most = double.PositiveInfinity)
    {
        Estimate<double> estimate = Fields.Estimate(name, least, most);
        RequireKnown(Fields, name, estimate.Provenance);
        return estimate;
    }

    /// <summary>Reads and checks the fields <c>source</c> and <c>mark</c> that cover the plain figures of this table.</summary>
    internal Provenance Provenance()
    {
        Provenance provenance = Fields.Provenance();
        RequireKnown(Fields, "source", provenance);
        return provenance;
    }

    /// <summary>Builds a bench object; an impossible geometry becomes a complaint about the field it names.</summary>
    internal T Build<T>(Func<T> make)
    {
        try
        {
            return make();
        }
        catch (ImpossibleGeometryException impossible)
        {
            throw Blame(impossible);
        }
    }

    /// <summary>Turns an impossible geometry into a complaint with file, line and field.</summary>
    internal DataFileException Blame(ImpossibleGeometryException impossible)
    {
        FieldReader at = Fields;
        string[] path = impossible.Field.Split('.');
        foreach (string step in path.SkipLast(1))
        {
            if (!at.Has(step))
            {
                return Fields.Wrong($"{impossible.Field} {impossible.Rule}".Trim());
            }

            at = at.Table(step);
        }

        return path[^1].Length > 0 && at.Has(path[^1]) ? at.Wrong(path[^1], impossible.Rule) : at.Wrong($"{path[^1]} {impossible.Rule}".Trim());
    }

    private void RequireKnown(FieldReader fields, string name, Provenance provenance)
    {
        if (bibliography.Cite(provenance.Source) is null)
        {
            throw fields.Wrong(name, $"names the source '{BadValue.Shown(provenance.Source)}', which sources.toml does not list; add it there or say 'common practice, no source'");
        }
    }
}
