using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using UnitsNet;

namespace ReworkThermal.Core.Verification;

/// <summary>Melting ranges, reactions, mixed joints and densities beside the phase engine and the rule of added volumes.</summary>
/// <param name="engine">The engine on the shipped data.</param>
/// <param name="properties">The rules for density.</param>
internal sealed class MeltingChecks(PhaseEngine engine, SolderProperties properties)
{
    /// <summary>Allowed share by which a density may differ: the scatter between tables for one alloy [1].</summary>
    private const double DensityRoom = SolderProperties.DensityUncertainty;

    internal IEnumerable<ComparedValue> Ranges(ReferenceRow row)
    {
        MeltingOutcome outcome = engine.MeltingOf(CompositionOf(row));
        MeltingBehaviour? melting = (outcome as MeltingOutcome.Found)?.Behaviour;
        string compare = row["compare"];
        if (compare.Contains("solidus", StringComparison.Ordinal) && row["solidus_c"].Length > 0)
        {
            yield return Compare("solidus", melting?.Solidus ?? (outcome as MeltingOutcome.SolidusOnly)?.Solidus, "solidus");
        }

        if (compare.Contains("flow", StringComparison.Ordinal))
        {
            yield return Compare("flow temperature against liquidus", melting?.Flow, "liquidus");
        }
        else if (compare.Contains("liquidus", StringComparison.Ordinal))
        {
            yield return Compare("liquidus", melting?.Liquidus, "liquidus");
        }

        ComparedValue Compare(string quantity, Temperature? computed, string column)
        {
            double room = row.NumberOrNull(column + "_tolerance_k") ?? 0;
            PublishedValue published = new(
                VerificationArea.Melting, row.Table, row.Line, $"{AlloyOf(row)} {quantity}", "°C", row.Number(column + "_c"), room, room, row.Origin(), row["reason"]);
            return new ComparedValue(published, computed?.DegreesCelsius, row["gate"] == "yes");
        }
    }

    /// <summary>Rows that state a temperature; those that only state that liquid is left have no figure to compare.</summary>
    internal IEnumerable<ComparedValue> EndOfFreezing(ReferenceRow row)
    {
        if (row.NumberOrNull("published_c") is not { } celsius)
        {
            yield break;
        }

        double? end = (engine.SolidifyWithoutDiffusion(CompositionOf(row)) as ScheilOutcome.Found)?.Path.End.DegreesCelsius;
        PublishedValue published = new(
            VerificationArea.Melting, row.Table, row.Line, $"{AlloyOf(row)} end of freezing", "°C", celsius, row.Number("below_k"), row.Number("above_k"), row.Origin(), row["reason"]);
        yield return new ComparedValue(published, end, row["gate"] == "yes");
    }

    internal ComparedValue Density(ReferenceRow row)
    {
        double listed = row.Number("density_kg_m3");
        double? computed = AlloyDesignation.Read(row["designation"]) is DesignationReading.Accepted alloy
            ? properties.SolidDensity(alloy.Fractions).KilogramsPerCubicMeter
            : null;
        return ComparedValue.Binding(VerificationArea.Melting, row, $"{row["designation"]} density", "kg/m³", listed, DensityRoom * listed, computed);
    }

    internal static ComparedValue Reaction(InvariantComparison row, IReadOnlyDictionary<string, string> citations) => new(
        new PublishedValue(
            VerificationArea.Melting,
            row.System.File,
            0,
            $"{row.System.Title}: {row.Listed.Reaction}",
            "°C",
            row.Listed.Celsius,
            row.Listed.ToleranceKelvin,
            row.Listed.ToleranceKelvin,
            new Provenance(citations.GetValueOrDefault(row.Listed.Provenance.Source, row.Listed.Provenance.Source), row.Listed.Provenance.Mark),
            row.Listed.Note),
        row.ComputedCelsius,
        Binds: true);

    private static MassFractions CompositionOf(ReferenceRow row)
    {
        double nickel = row.Number("ni_wt_pct");
        return MassFractions.FromMasses([.. ElementData.All.Select(e => row.Number(e.ToString().ToLowerInvariant() + "_wt_pct"))], nickel, nickel);
    }

    private static string AlloyOf(ReferenceRow row) => CompositionOf(row).ToString();
}
