using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>Reads a case of kind <c>posed</c>: explicit blocks, faces and start.</summary>
internal static class PosedCase
{
    private static readonly Dictionary<string, ThermalFace> _faces = new(StringComparer.Ordinal)
    {
        ["top"] = ThermalFace.Top,
        ["bottom"] = ThermalFace.Bottom,
        ["rim"] = ThermalFace.Rim,
        ["bore"] = ThermalFace.Bore,
    };

    internal static HeatCase Read(FieldReader file, SolverSettings settings)
    {
        PosedProblem problem = new()
        {
            InnerRadius = Place(file, "inner_radius"),
            OuterRadius = Place(file, "outer_radius"),
            Height = Place(file, "height"),
            Blocks = [.. file.Tables("block").Select(Block)],
            Contacts = [.. file.Tables("contact").Select(c => new PosedContact(Place(c, "height"), c.Quantity("conductance", UnitTable.HeatTransferCoefficients)))],
            Stages = [.. file.Tables("stage").Select(Stage)],
            Probes = [.. file.Tables("probe").Select(p => new PosedProbe(p.Text("name"), Place(p, "radius"), Place(p, "height")))],
            RadialDivisions = Divisions(file, "radial"),
            AxialDivisions = Divisions(file, "axial"),
            Steady = file.Has("steady") && file.Truth("steady"),
        };
        if (problem.Probes.Count == 0)
        {
            throw file.Wrong("probe", "at least one probe is needed");
        }

        if (problem.Probes.GroupBy(p => p.Name, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw file.Wrong("probe", $"the name '{twice.Key}' is used twice");
        }

        try
        {
            problem.Check();
        }
        catch (ArgumentException impossible)
        {
            throw file.Wrong(impossible.Message);
        }

        return new HeatCase.Posed(problem) { Settings = settings };
    }

    private static Length Place(FieldReader table, string name) => table.Quantity(name, UnitTable.Lengths, Length.Zero);

    private static PosedBlock Block(FieldReader table) => new(
        Place(table, "inner"),
        Place(table, "outer"),
        Place(table, "bottom"),
        Place(table, "top"),
        table.Has("solidus") ? new PosedMaterial.Melting(SolderTable.Curve(table)) : Solid(table),
        table.Quantity("start", UnitTable.Temperatures));

    private static PosedMaterial.Solid Solid(FieldReader table)
    {
        ThermalConductivity least = ThermalConductivity.FromWattsPerMeterKelvin(1e-6);
        bool one = table.Has("conductivity");
        return new PosedMaterial.Solid(
            table.Quantity(one ? "conductivity" : "radial_conductivity", UnitTable.Conductivities, least),
            table.Quantity(one ? "conductivity" : "axial_conductivity", UnitTable.Conductivities, least),
            table.Quantity("density", UnitTable.Densities, Density.FromKilogramsPerCubicMeter(1e-6)),
            table.Quantity("specific_heat", UnitTable.SpecificHeats, SpecificEntropy.FromJoulesPerKilogramKelvin(1e-6)));
    }

    private static PosedStage Stage(FieldReader table) =>
        new(table.Quantity("span", UnitTable.Durations, Duration.Zero), [.. table.Tables("face").Select(Patch)]);

    private static FacePatch Patch(FieldReader table) => new(
        table.OneOf("face", _faces),
        table.Has("from") ? Place(table, "from") : Length.Zero,
        table.Has("to") ? Place(table, "to") : Length.FromMeters(1e6),
        Condition(table));

    private static FaceCondition Condition(FieldReader table) => table.Text("kind") switch
    {
        "convection" => new FaceCondition.Convection(table.Quantity("coefficient", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.Zero), Course(table, "gas")),
        "radiation" => new FaceCondition.Radiation(table.Number("exchange_factor", 0, 1), Course(table, "surroundings")),
        "flux" => new FaceCondition.Flux(table.Quantity("flux", UnitTable.HeatFluxes)),
        "held" => new FaceCondition.Held(Course(table, "temperature")),
        string other => throw table.Wrong("kind", $"must be one of convection, radiation, flux, held; got '{other}'"),
    };

    // A temperature, or a table NAME_ramp or NAME_sine.
    private static TimeCourse Course(FieldReader table, string name)
    {
        if (table.TableOrNull(name + "_ramp") is { } ramp)
        {
            return new TimeCourse.Ramp(
                ramp.Quantity("from", UnitTable.Temperatures),
                ramp.Quantity("to", UnitTable.Temperatures),
                ramp.Quantity("rate", UnitTable.TemperatureRates),
                Duration.Zero);
        }

        return table.TableOrNull(name + "_sine") is { } sine
            ? new TimeCourse.Sine(
                sine.Quantity("mean", UnitTable.Temperatures),
                sine.Quantity("amplitude", UnitTable.TemperatureDeltas),
                sine.Quantity("period", UnitTable.Durations, Duration.FromSeconds(1e-9)))
            : new TimeCourse.Constant(table.Quantity(name, UnitTable.Temperatures, Temperature.FromKelvins(0)));
    }

    private static Division[]? Divisions(FieldReader file, string name)
    {
        IReadOnlyList<FieldReader> tables = file.Tables(name);
        return tables.Count == 0
            ? null
            : [.. tables.Select(t => new Division(Place(t, "to"), t.Whole("cells", 1, 2000), t.Has("ratio") ? t.Number("ratio", 0.1, 10) : 1))];
    }
}
