using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Verification;
using ReworkThermal.Data.Cases;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.Data.Reference;

/// <summary>The shipped case files that the table of practice names, ready to be solved.</summary>
public static class PracticeCases
{
    /// <summary>Reads them and computes how their solders melt.</summary>
    /// <param name="rows">Rows of the table of practice.</param>
    /// <param name="engine">Phase equilibria.</param>
    /// <returns>The problems by name of their case.</returns>
    /// <exception cref="FormatException">A shipped case is not one of a joint whose solder can be computed, which is a fault of the program.</exception>
    public static IReadOnlyDictionary<string, JointProblem> Load(IReadOnlyList<ReferenceRow> rows, PhaseEngine engine)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(engine);
        DataRoot shipped = DataRoot.BesideProgram;
        Workshop workshop = Workshop.Load(shipped);
        SolderHeat heat = new(workshop.Alloys.Properties);
        Dictionary<string, JointProblem> problems = new(StringComparer.Ordinal);
        foreach (string name in rows.Select(r => r["case"]).Distinct())
        {
            problems[name] = HeatCaseFile.Read(Path.Combine(shipped.Profiles, "cases", name + ".toml"), () => workshop) is HeatCase.AtJoint joint
                && engine.MeltingOf(joint.Mix) is MeltingOutcome.Found melting
                ? joint.With(heat.CurveOf(melting.Behaviour, joint.MassFactor), melting.Behaviour.Flow)
                : throw new FormatException($"the case '{name}' is not one of a joint whose solder can be computed");
        }

        return problems;
    }
}
