using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.HeatFlow.Meshing;
using ReworkThermal.Core.HeatFlow.Posing;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>Reads a textbook problem: body, materials, blocks, stages with their faces, probes, and a mesh if wanted.</summary>
internal static class PosedCaseReader
{
    private const int MostCells = 2000;

    private static readonly Length _least = Length.FromNanometers(100);

    private static readonly Length _most = Length.FromMeters(10);

    private static readonly Temperature _coldest = Temperature.FromKelvins(1);

    private static readonly Temperature _hottest = Temperature.FromDegreesCelsius(3000);

    private static readonly ThermalConductivity _leastConductivity = ThermalConductivity.FromWattsPerMeterKelvin(1e-4);

    private static readonly Density _leastDensity = Density.FromKilogramsPerCubicMeter(1e-3);

    private static readonly SpecificEntropy _leastHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(1e-3);

    internal static PosedProblem Read(FieldReader file)
    {
        FieldReader body = file.Table("body");
        Dictionary<string, PosedMaterial> materials = new(StringComparer.Ordinal);
        foreach (FieldReader table in file.Tables("material"))
        {
            if (!materials.TryAdd(table.Text("name"), Material(table)))
            {
                throw table.Wrong("name", "is already the name of another material");
            }
        }

        FieldReader? mesh = file.TableOrNull("mesh");
        Length inner = body.Quantity("inner_radius", UnitTable.Lengths, Length.Zero, _most);
        PosedProblem problem = new()
        {
            InnerRadius = inner,
            OuterRadius = body.Quantity("outer_radius", UnitTable.Lengths, inner + _least, _most),
            Height = body.Quantity("height", UnitTable.Lengths, _least, _most),
            Steady = body.Has("steady") && body.Truth("steady"),
            Blocks = AtLeastOne(file, "block", [.. file.Tables("block").Select(t => Block(t, materials))]),
            Contacts = [.. file.Tables("contact").Select(Contact)],
            Stages = AtLeastOne(file, "stage", [.. file.Tables("stage").Select(Stage)]),
            Probes = AtLeastOne(file, "probe", [.. file.Tables("probe").Select(Probe)]),
            RadialDivisions = mesh is not null && mesh.Has("radial") ? [.. mesh.Tables("radial").Select(Divide)] : null,
            AxialDivisions = mesh is not null && mesh.Has("axial") ? [.. mesh.Tables("axial").Select(Divide)] : null,
        };
        return problem;
    }

    private static List<T> AtLeastOne<T>(FieldReader file, string field, List<T> items) =>
        items.Count > 0 ? items : throw file.Wrong($"needs at least one [[{field}]]");

    private static PosedMaterial Material(FieldReader table)
    {
        Density density = table.Quantity("density", UnitTable.Densities, _leastDensity);
        if (table.TableOrNull("melting") is not { } melting)
        {
            return new PosedMaterial.Solid(
                table.Quantity("radial_conductivity", UnitTable.Conductivities, _leastConductivity),
                table.Quantity("axial_conductivity", UnitTable.Conductivities, _leastConductivity),
                density,
                table.Quantity("specific_heat", UnitTable.SpecificHeats, _leastHeat));
        }

        Temperature solidus = melting.Quantity("solidus", UnitTable.Temperatures, _coldest, _hottest);
        return new PosedMaterial.Melting(EnthalpyCurve.Melting(
            solidus,
            melting.Quantity("liquidus", UnitTable.Temperatures, solidus, _hottest),
            melting.Quantity("latent_heat", UnitTable.SpecificEnergies, SpecificEnergy.Zero),
            melting.Quantity("solid_specific_heat", UnitTable.SpecificHeats, _leastHeat),
            melting.Quantity("liquid_specific_heat", UnitTable.SpecificHeats, _leastHeat),
            density,
            melting.Quantity("solid_conductivity", UnitTable.Conductivities, _leastConductivity),
            melting.Quantity("liquid_conductivity", UnitTable.Conductivities, _leastConductivity)));
    }

    private static PosedBlock Block(FieldReader table, Dictionary<string, PosedMaterial> materials) => new(
        table.Quantity("inner", UnitTable.Lengths, Length.Zero, _most),
        table.Quantity("outer", UnitTable.Lengths, _least, _most),
        table.Quantity("bottom", UnitTable.Lengths, Length.Zero, _most),
        table.Quantity("top", UnitTable.Lengths, _least, _most),
        table.OneOf("material", materials),
        table.Quantity("start", UnitTable.Temperatures, _coldest, _hottest));

    private static PosedContact Contact(FieldReader table) => new(
        table.Quantity("height", UnitTable.Lengths, _least, _most),
        table.Quantity("conductance", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1e-6)));

    private static PosedStage Stage(FieldReader table) => new(
        table.Quantity("span", UnitTable.Durations, Duration.FromMicroseconds(1), Duration.FromHours(24)),
        [.. table.Tables("face").Select(FaceReader.Read)]);

    private static PosedProbe Probe(FieldReader table) => new(
        table.Text("name"),
        table.Quantity("radius", UnitTable.Lengths, Length.Zero, _most),
        table.Quantity("height", UnitTable.Lengths, Length.Zero, _most));

    private static Division Divide(FieldReader table) => new(
        table.Quantity("to", UnitTable.Lengths, _least, _most),
        table.Whole("cells", 1, MostCells),
        table.Has("ratio") ? table.Number("ratio", 0.1, 10) : 1);
}
