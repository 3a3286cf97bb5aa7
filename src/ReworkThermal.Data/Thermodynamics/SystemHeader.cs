using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Thermodynamics;

/// <summary>Reads what a system file says about itself: status, uncertainty, range, deviations and invariants.</summary>
internal static class SystemHeader
{

    private static readonly Dictionary<string, LimitedAnswer> _answers = new(StringComparer.Ordinal)
    {
        ["wider"] = LimitedAnswer.Wider,
        ["solidus only"] = LimitedAnswer.SolidusOnly,
        ["none"] = LimitedAnswer.None,
    };

    private static readonly Dictionary<string, bool> _wholes = new(StringComparer.Ordinal)
    {
        ["alloy"] = false,
        ["system"] = true,
    };

    internal static SystemDescription Read(FieldReader file, string name, IReadOnlyList<Element> elements, DatabaseAssembly assembly)
    {
        SystemStatus status = file.OneOf<SystemStatus>("status");
        string? caveat = file.TextOrNull("caveat");
        if (status != SystemStatus.Assessed && caveat is null)
        {
            throw file.Wrong("caveat", "is required where the status is not \"assessed\": every answer that leans on the system prints it");
        }

        List<ListedInvariant> invariants = [];
        foreach (FieldReader table in file.Tables("invariant"))
        {
            invariants.Add(Invariant(table, assembly));
        }

        return new SystemDescription(
            name,
            file.Text("title"),
            elements,
            status,
            file.Quantity("uncertainty", UnitTable.TemperatureDeltas, TemperatureDelta.Zero).Kelvins,
            caveat,
            file.Text("valid_range"),
            [.. file.Tables("limit").Select(table => Limit(table, elements))],
            file.Texts("known_deviations"),
            invariants,
            [.. file.Tables("fit_point").Select(table => Point(table, assembly))]);
    }

    private static FitPoint Point(FieldReader table, DatabaseAssembly assembly)
    {
        Provenance provenance = assembly.RequireSource(table);
        string solid = table.Text("solid");
        bool bound = table.Has("below");
        return assembly.HasPhase(solid)
            ? new FitPoint(
                solid,
                Composition(table, "liquid"),
                table.Quantity(bound ? "below" : "published", UnitTable.Temperatures).DegreesCelsius,
                bound,
                table.Quantity("sigma", UnitTable.TemperatureDeltas, TemperatureDelta.FromKelvins(0.01)).Kelvins,
                table.Quantity("residual", UnitTable.TemperatureDeltas).Kelvins,
                provenance)
            : throw table.Wrong("solid", $"'{solid}' is not a phase of phases.toml");
    }

    private static SystemLimit Limit(FieldReader table, IReadOnlyList<Element> elements)
    {
        FieldReader shares = table.Table("above");
        List<(Element, double)> above = [];
        foreach (string symbol in shares.Names.ToList())
        {
            above.Add(ElementData.TryParseSymbol(symbol, out Element element) && elements.Contains(element)
                ? (element, shares.Quantity(symbol, UnitTable.Ratios, Ratio.Zero, Ratio.FromPercent(100)).DecimalFractions)
                : throw shares.Wrong(symbol, "is not an element of this system"));
        }

        if (above.Count == 0)
        {
            throw table.Wrong("above", "must name at least one element with its share, such as { Ag = \"1 %\" }");
        }

        LimitedAnswer answer = table.OneOf("answer", _answers);
        return new SystemLimit(
            above,
            table.Has("of") && table.OneOf("of", _wholes),
            answer,
            answer == LimitedAnswer.Wider && (table.Has("uncertainty") || !table.Has("solidus_higher_by"))
                ? table.Quantity("uncertainty", UnitTable.TemperatureDeltas, TemperatureDelta.Zero).Kelvins
                : 0,
            table.Has("solidus_higher_by") ? table.Quantity("solidus_higher_by", UnitTable.TemperatureDeltas, TemperatureDelta.Zero).Kelvins : 0,
            table.Text("caveat"));
    }

    private static ListedInvariant Invariant(FieldReader table, DatabaseAssembly assembly)
    {
        Provenance provenance = assembly.RequireSource(table);
        IReadOnlyList<string> phases = table.Texts("phases");
        foreach (string phase in phases)
        {
            if (!assembly.HasPhase(phase))
            {
                throw table.Wrong("phases", $"'{phase}' is not a phase of phases.toml");
            }
        }

        MassFractions? liquid = table.Has("liquid") ? Composition(table, "liquid") : null;
        return new ListedInvariant(
            table.Text("reaction"),
            phases,
            Composition(table, "through"),
            table.Quantity("published", UnitTable.Temperatures).DegreesCelsius,
            table.Quantity("tolerance", UnitTable.TemperatureDeltas, TemperatureDelta.Zero).Kelvins,
            liquid,
            liquid is null ? 0 : table.Quantity("liquid_tolerance", UnitTable.Ratios, Ratio.Zero).DecimalFractions,
            table.Quantity("computed", UnitTable.Temperatures).DegreesCelsius,
            provenance,
            table.TextOrNull("note") ?? string.Empty);
    }

    private static MassFractions Composition(FieldReader table, string name)
    {
        FieldReader shares = table.Table(name);
        double[] masses = new double[ElementData.Count];
        foreach (string symbol in shares.Names.ToList())
        {
            if (!ElementData.TryParseSymbol(symbol, out Element element))
            {
                throw shares.Wrong(symbol, "is not one of the modelled elements");
            }

            masses[(int)element] = shares.Quantity(symbol, UnitTable.Ratios, Ratio.Zero, Ratio.FromPercent(100)).DecimalFractions;
        }

        double sum = masses.Sum();
        return Math.Abs(sum - 1) < 1e-3
            ? MassFractions.FromMasses(masses)
            : throw table.Wrong(name, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"must sum to 100 %, got {sum * 100:0.###} %"));
    }
}
