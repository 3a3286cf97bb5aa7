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

    /// <summary>Loads a database.</summary>
    /// <param name="folder">For example <c>alloys/thermodynamics</c>; its parent holds the <c>sources.toml</c>.</param>
    /// <returns>The database.</returns>
    /// <exception cref="DataFileException">A file is missing or not in order.</exception>
    public static ThermodynamicDatabase Load(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        Bibliography sources = Bibliography.Load(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(folder))!, "sources.toml"));
        DatabaseAssembly assembly = new(sources);

        FieldReader unary = FieldReader.Open(Path.Combine(folder, UnaryFile));
        DatabaseAssembly.RequireUnits(unary);
        assembly.AddFunctions(unary);
        FieldReader phases = FieldReader.Open(Path.Combine(folder, PhasesFile));
        assembly.AddPhases(phases);
        phases.Finish();
        assembly.AddEndMembers(unary);
        unary.Finish();

        foreach (string path in Directory.EnumerateFiles(folder, "*.toml").Order(StringComparer.Ordinal))
        {
            string name = Path.GetFileName(path);
            if (name is ModelFile or UnaryFile or PhasesFile)
            {
                continue;
            }

            FieldReader system = FieldReader.Open(path);
            assembly.AddSystem(system, name);
            system.Finish();
        }

        FieldReader model = FieldReader.Open(Path.Combine(folder, ModelFile));
        ThermodynamicDatabase database = assembly.Build(
            model.Number("gas_constant_j_per_mol_k", 8.3, 8.4),
            model.Quantity("lowest", UnitTable.Temperatures, Temperature.FromKelvins(250), Temperature.FromKelvins(400)).Kelvins,
            model.Quantity("highest", UnitTable.Temperatures, Temperature.FromKelvins(800), Temperature.FromKelvins(3000)).Kelvins,
            ReadUncertainty(model, assembly),
            phases);
        model.Finish();
        return database;
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
