using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Thermodynamics;

/// <summary>
/// Reads the thermodynamic data of a folder: <c>model.toml</c> (settings), <c>unary.toml</c> (pure elements), <c>phases.toml</c>
/// (phases and the elements they may hold) and one file per system of two or three elements. Energies are in J/mol and
/// temperatures in kelvin, as the files state themselves.
/// </summary>
public static class ThermodynamicFiles
{
    private const string ModelFile = "model.toml";
    private const string UnaryFile = "unary.toml";
    private const string PhasesFile = "phases.toml";

    /// <summary>Name of the folder below the root of the data.</summary>
    public const string Folder = "alloys/thermodynamics";

    /// <summary>Loads a database from one folder.</summary>
    /// <param name="folder">For example <c>alloys/thermodynamics</c>; its parent holds the <c>sources.toml</c>.</param>
    /// <returns>The database.</returns>
    /// <exception cref="DataFileException">A file is missing or not in order.</exception>
    public static ThermodynamicDatabase Load(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return Load(
            folder,
            Bibliography.Load(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(folder))!, "sources.toml")),
            [.. Directory.EnumerateFiles(folder, "*.toml").OrderBy(f => Path.GetFileName(f), StringComparer.Ordinal).Select(f => (f, false))]);
    }

    /// <summary>
    /// Loads the shipped database with the systems of the user's own folder: a file of the same name stands in for a shipped system,
    /// other files are added. What all systems share cannot be replaced.
    /// </summary>
    /// <param name="root">Where the data folders are.</param>
    /// <returns>The database.</returns>
    /// <exception cref="DataFileException">A file is missing or not in order, or an own system does not fit the shared lattice values.</exception>
    public static ThermodynamicDatabase Load(DataRoot root)
    {
        ArgumentNullException.ThrowIfNull(root);
        IReadOnlyList<(string Path, bool Own)> files = [.. root.Files(Folder).Select(f => (f, root.IsOwn(f)))];
        foreach ((string path, bool own) in files)
        {
            if (own && Path.GetFileName(path) is (ModelFile or UnaryFile or PhasesFile))
            {
                throw new DataFileException([new DataFileProblem(path, 1, "file", "cannot stand in for the shipped one: all systems share it. A system of your own goes into a file of its own, such as pb-sn.toml")]);
            }
        }

        return Load(Path.Combine(root.Alloys, "thermodynamics"), root.SourcesOf("alloys"), files);
    }

    private static ThermodynamicDatabase Load(string folder, Bibliography sources, IReadOnlyList<(string Path, bool Own)> files)
    {
        DatabaseAssembly assembly = new(sources);

        FieldReader unary = FieldReader.Open(Path.Combine(folder, UnaryFile));
        DatabaseAssembly.RequireUnits(unary);
        assembly.AddFunctions(unary);
        FieldReader phases = FieldReader.Open(Path.Combine(folder, PhasesFile));
        assembly.AddPhases(phases);
        phases.Finish();
        assembly.AddEndMembers(unary);
        unary.Finish();

        foreach ((string path, bool own) in files)
        {
            string name = Path.GetFileName(path);
            if (name is ModelFile or UnaryFile or PhasesFile)
            {
                continue;
            }

            FieldReader system = FieldReader.Open(path);
            assembly.AddSystem(system, own ? path : name, own);
            system.Finish();
        }

        FieldReader model = FieldReader.Open(Path.Combine(folder, ModelFile));
        ThermodynamicDatabase database = assembly.Build(
            model.Number("gas_constant_j_per_mol_k", 8.3, 8.4),
            model.Quantity("lowest", UnitTable.Temperatures, Temperature.FromKelvins(250), Temperature.FromKelvins(400)).Kelvins,
            model.Quantity("highest", UnitTable.Temperatures, Temperature.FromKelvins(800), Temperature.FromKelvins(3000)).Kelvins,
            ReadUncertainty(model, assembly),
            ReadNickel(model, assembly),
            phases);
        model.Finish();
        return database;
    }

    private static NickelRule ReadNickel(FieldReader model, DatabaseAssembly assembly)
    {
        FieldReader rule = model.Table("nickel");
        return new NickelRule(
            rule.Quantity("least_saturation", UnitTable.Ratios, Ratio.Zero, Ratio.FromPercent(1)).DecimalFractions,
            rule.Quantity("most_saturation", UnitTable.Ratios, Ratio.Zero, Ratio.FromPercent(1)).DecimalFractions,
            rule.Quantity("uncertainty", UnitTable.TemperatureDeltas, TemperatureDelta.Zero).Kelvins,
            rule.Quantity("uncertainty_per_percent", UnitTable.TemperatureDeltas, TemperatureDelta.Zero).Kelvins,
            assembly.RequireSource(rule));
    }

    private static UncertaintyRule ReadUncertainty(FieldReader model, DatabaseAssembly assembly)
    {
        FieldReader rule = model.Table("uncertainty");
        assembly.RequireSource(rule);
        return new UncertaintyRule(
            rule.Quantity("binary", UnitTable.TemperatureDeltas).Kelvins,
            rule.Quantity("ternary", UnitTable.TemperatureDeltas).Kelvins,
            rule.Quantity("higher", UnitTable.TemperatureDeltas).Kelvins,
            rule.Quantity("full_weight", UnitTable.Ratios).DecimalFractions);
    }
}
