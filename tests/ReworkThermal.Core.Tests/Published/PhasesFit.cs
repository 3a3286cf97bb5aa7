using System.Globalization;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Verification;
using ReworkThermal.Data.Reference;
using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>
/// The least-squares fit behind the systems that no published assessment covers. Points and weights stand in the system files; which
/// parameters are free, where they start and how far they may reasonably go stands in <c>reference/melting-fit.csv</c>. Each parameter
/// is tied to its start with its reach as standard deviation, so that points too few to fix it leave it where it was.
/// </summary>
internal sealed class PhasesFit
{
    private readonly IReadOnlyList<Knob> _knobs;
    private readonly ThermodynamicDatabase _database;

    private PhasesFit(ThermodynamicDatabase database, IReadOnlyList<Knob> knobs)
    {
        _knobs = knobs;
        _database = database;
    }

    /// <summary>A free parameter: one term of one interaction or end-member [J/mol or J/mol/K].</summary>
    internal sealed record Knob(string Phase, IReadOnlyList<Element> Elements, int Order, bool OfTemperature, double Start, double Reach)
    {
        internal string Name => $"{Phase} {string.Join(",", Elements)} {(Order < 0 ? "end-member" : "L" + Order.ToString(CultureInfo.InvariantCulture))}{(OfTemperature ? " T" : string.Empty)}";
    }

    internal IReadOnlyList<Knob> Knobs => _knobs;

    internal static PhasesFit Of(ThermodynamicDatabase database, string group)
    {
        List<Knob> knobs = [];
        foreach (ReferenceRow row in ReferenceLibrary.Rows("melting-fit.csv").Where(r => r["group"] == group))
        {
            knobs.Add(new Knob(
                row["phase"],
                [.. row["elements"].Split(' ').Select(s => ElementData.TryParseSymbol(s, out Element e) ? e : throw new InvalidDataException(s))],
                int.Parse(row["order"], CultureInfo.InvariantCulture),
                row["term"] == "T",
                double.Parse(row["start"], CultureInfo.InvariantCulture),
                double.Parse(row["reach"], CultureInfo.InvariantCulture)));
        }

        string[] titles = group.Split('+');
        return new PhasesFit(database with { Systems = [.. database.Systems.Where(s => titles.Contains(s.Title))] }, knobs);
    }

    /// <summary>Runs the fit from the starting values; returns the parameters found.</summary>
    internal double[] Run()
    {
        int points = _database.Systems.Sum(s => s.FitPoints.Count);
        Vector<double> Model(Vector<double> moves, Vector<double> x) => Vector<double>.Build.DenseOfEnumerable(WeightedResiduals(moves).Concat(moves));
        Vector<double> zeros = Vector<double>.Build.Dense(points + _knobs.Count);
        IObjectiveModel objective = ObjectiveFunction.NonlinearModel(Model, zeros.Clone(), zeros, accuracyOrder: 2);
        NonlinearMinimizationResult result = new LevenbergMarquardtMinimizer(maximumIterations: 60)
            .FindMinimum(objective, Vector<double>.Build.Dense(_knobs.Count, 1e-6));
        return [.. _knobs.Select((k, i) => k.Start + (k.Reach * result.MinimizingPoint[i]))];
    }

    /// <summary>The same parameters as they stand in the files.</summary>
    internal double[] Shipped() => [.. _knobs.Select(k =>
    {
        GibbsPiece piece = Terms(_database, k).Pieces[0];
        return k.OfTemperature ? piece.Linear : piece.Constant;
    })];

    private IEnumerable<double> WeightedResiduals(Vector<double> moves)
    {
        ThermodynamicDatabase changed = _database;
        for (int i = 0; i < _knobs.Count; i++)
        {
            changed = With(changed, _knobs[i], _knobs[i].Start + (_knobs[i].Reach * moves[i]));
        }

        return FitChecks.Recompute(changed).Select(c => Math.Clamp((c.ResidualKelvin ?? 40) / c.Point.SigmaKelvin, -40, 40));
    }

    private static TemperatureExpression Terms(ThermodynamicDatabase database, Knob knob)
    {
        PhaseDescription phase = database.Phases.Single(p => p.Name == knob.Phase);
        return knob.Order < 0 ? phase.EndMembers.Single(e => e.Occupation.SequenceEqual(knob.Elements)).Gibbs
            : knob.Elements.Count == 3 ? phase.Triples.Single(t => t.Elements.SequenceEqual(knob.Elements)).Coefficients[knob.Order]
            : phase.Pairs.Single(p => p.First == knob.Elements[0] && p.Second == knob.Elements[1]).Coefficients[knob.Order];
    }

    private static ThermodynamicDatabase With(ThermodynamicDatabase database, Knob knob, double value)
    {
        TemperatureExpression Changed(TemperatureExpression terms)
        {
            GibbsPiece piece = terms.Pieces[0];
            return terms with { Pieces = [knob.OfTemperature ? piece with { Linear = value } : piece with { Constant = value }] };
        }

        IReadOnlyList<TemperatureExpression> ChangedAt(IReadOnlyList<TemperatureExpression> list) =>
            [.. list.Select((terms, order) => order == knob.Order ? Changed(terms) : terms)];

        PhaseDescription ChangedPhase(PhaseDescription phase) => knob.Order < 0
            ? phase with { EndMembers = [.. phase.EndMembers.Select(e => e.Occupation.SequenceEqual(knob.Elements) ? e with { Gibbs = Changed(e.Gibbs) } : e)] }
            : knob.Elements.Count == 3
                ? phase with { Triples = [.. phase.Triples.Select(t => t.Elements.SequenceEqual(knob.Elements) ? t with { Coefficients = ChangedAt(t.Coefficients) } : t)] }
                : phase with { Pairs = [.. phase.Pairs.Select(p => p.First == knob.Elements[0] && p.Second == knob.Elements[1] ? p with { Coefficients = ChangedAt(p.Coefficients) } : p)] };

        return database with { Phases = [.. database.Phases.Select(p => p.Name == knob.Phase ? ChangedPhase(p) : p)] };
    }
}
