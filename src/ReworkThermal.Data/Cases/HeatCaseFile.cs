using ReworkThermal.Core.HeatFlow.Solving;
using ReworkThermal.Data.Requests;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>Reads a case of heat flow (CASE.toml).</summary>
public static class HeatCaseFile
{
    private const double MostRefinement = 4;

    private static readonly Dictionary<string, bool> _kinds = new(StringComparer.Ordinal) { ["posed"] = false, ["joint"] = true };

    private static readonly TemperatureDelta _finest = TemperatureDelta.FromKelvins(0.0001);

    private static readonly TemperatureDelta _coarsest = TemperatureDelta.FromKelvins(5);

    /// <summary>Reads a case.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="workshop">Loads what a joint case may refer to; not called for a posed problem.</param>
    /// <returns>The case.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order; file, line and field are named.</exception>
    public static HeatCase Read(string path, Func<Workshop> workshop)
    {
        ArgumentNullException.ThrowIfNull(workshop);
        FieldReader file = FieldReader.Open(path);
        string title = file.Text("title");
        SolverSettings settings = ReadSettings(file.TableOrNull("solver"));
        HeatCase read = file.OneOf("kind", _kinds)
            ? JointCaseReader.Read(file, title, settings, workshop())
            : new HeatCase.Posed(PosedCaseReader.Read(file)) { Title = title, Settings = settings };
        file.Finish();
        return read;
    }

    private static SolverSettings ReadSettings(FieldReader? table)
    {
        // A bench question is answered with the error that the mesh leaves, unless the file says otherwise.
        SolverSettings settings = new() { EstimateMeshError = true };
        if (table is null)
        {
            return settings;
        }

        return settings with
        {
            StepTolerance = table.Has("step_tolerance")
                ? table.Quantity("step_tolerance", UnitTable.TemperatureDeltas, _finest, _coarsest)
                : settings.StepTolerance,
            Refinement = table.Has("refinement") ? table.Number("refinement", 0.25, MostRefinement) : settings.Refinement,
            LongestStep = table.Has("longest_step") ? table.Quantity("longest_step", UnitTable.Durations, Duration.FromMilliseconds(0.001)) : null,
            EstimateMeshError = !table.Has("estimate_mesh_error") || table.Truth("estimate_mesh_error"),
        };
    }
}
