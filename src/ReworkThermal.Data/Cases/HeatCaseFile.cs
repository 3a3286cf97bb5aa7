using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Data.Profiles;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>
/// Reads a heat-flow case: <c>kind = "joint"</c> for a joint on a profile board with tools and touches, <c>kind = "posed"</c> for a
/// textbook problem. Start reading this room here.
/// </summary>
public static class HeatCaseFile
{
    private static readonly Dictionary<string, bool> _kinds = new(StringComparer.Ordinal) { ["joint"] = true, ["posed"] = false };

    /// <summary>Reads a case file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="library">Profiles that the file may name.</param>
    /// <returns>The case.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    public static HeatCase Load(string path, ProfileLibrary library)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(library);
        return Read(FieldReader.Open(path), library);
    }

    /// <summary>Reads a case from text.</summary>
    /// <param name="text">TOML text.</param>
    /// <param name="file">Name for messages.</param>
    /// <param name="library">Profiles that the text may name.</param>
    /// <returns>The case.</returns>
    /// <exception cref="DataFileException">The text is not in order.</exception>
    public static HeatCase Parse(string text, string file, ProfileLibrary library)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(library);
        return Read(FieldReader.Parse(text, file), library);
    }

    private static HeatCase Read(FieldReader file, ProfileLibrary library)
    {
        bool isJoint = file.OneOf("kind", _kinds);
        SolverSettings settings = Settings(file.TableOrNull("solver"));
        HeatCase read = isJoint ? JointCase.Read(file, library, settings) : PosedCase.Read(file, settings);
        file.Finish();
        return read;
    }

    private static SolverSettings Settings(FieldReader? solver)
    {
        SolverSettings settings = new();
        if (solver is null)
        {
            return settings;
        }

        TemperatureDelta tolerance = solver.Has("step_tolerance")
            ? solver.Quantity("step_tolerance", UnitTable.TemperatureDeltas, TemperatureDelta.FromKelvins(1e-6), TemperatureDelta.FromKelvins(10))
            : settings.StepTolerance;
        Duration? First(string name) => solver.Has(name) ? solver.Quantity(name, UnitTable.Durations, Duration.FromSeconds(1e-9)) : null;
        return settings with
        {
            StepTolerance = tolerance,
            Refinement = solver.Has("refinement") ? solver.Number("refinement", 0.25, 16) : settings.Refinement,
            EstimateMeshError = solver.Has("mesh_error") && solver.Truth("mesh_error"),
            FirstStep = First("first_step"),
            LongestStep = First("longest_step"),
        };
    }
}
