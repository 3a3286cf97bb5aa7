using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Thermodynamics;

/// <summary>A phase while its parameters are being collected from several files.</summary>
internal sealed class PhaseDraft(string name, string shownAs, bool isLiquid, IReadOnlyList<Sublattice> sublattices)
{
    /// <summary>Two lattice values nearer than this are one [J/mol]: printed digits of the assessments.</summary>
    private const double SameValue = 0.5;

    /// <summary>Temperatures [K] at which lattice values are compared: soldering, and either side of it.</summary>
    private static readonly double[] _compared = [300, 450, 600, 900];

    private readonly List<EndMember> _ends = [];
    private readonly List<BinaryInteraction> _pairs = [];
    private readonly List<TernaryInteraction> _triples = [];

    internal string Name => name;

    internal bool IsLiquid => isLiquid;

    internal IReadOnlyList<Sublattice> Sublattices => sublattices;

    /// <summary>
    /// Adds an end-member. A system may state the lattice values it was assessed with although they stand in unary.toml already: they
    /// must be the same, because a set of parameters reproduces its assessment only with the values it was made with.
    /// </summary>
    internal void Add(FieldReader at, EndMember end, IReadOnlyList<GibbsFunction> functions)
    {
        if (_ends.Find(e => e.Occupation.SequenceEqual(end.Occupation)) is not { } known)
        {
            _ends.Add(end);
            return;
        }

        foreach (double kelvin in _compared)
        {
            double difference = end.Gibbs.JoulePerMole(kelvin, functions) - known.Gibbs.JoulePerMole(kelvin, functions);
            if (!(Math.Abs(difference) <= SameValue))
            {
                throw at.Wrong(at.Has("plus") ? "plus" : "shares", string.Create(
                    CultureInfo.InvariantCulture,
                    $"this lattice value of {string.Join("-", end.Occupation.Select(e => e.Symbol()))} in {name} differs by {difference:0.#} J/mol at {kelvin:0} K from the one that the other systems share; parameters assessed with another value do not fit"));
            }
        }
    }

    internal void Add(FieldReader at, BinaryInteraction pair)
    {
        if (_pairs.Exists(p => p.Sublattice == pair.Sublattice && Same([p.First, p.Second], [pair.First, pair.Second])))
        {
            throw at.Wrong($"this interaction in {name} is given twice");
        }

        _pairs.Add(pair);
    }

    internal void Add(FieldReader at, TernaryInteraction triple)
    {
        if (_triples.Exists(t => Same(t.Elements, triple.Elements)))
        {
            throw at.Wrong($"this interaction in {name} is given twice");
        }

        if (sublattices.Count != 1)
        {
            throw at.Wrong("phase", "must have one sublattice to take a ternary interaction");
        }

        _triples.Add(triple);
    }

    /// <summary>The finished phase; every way to fill the sublattices must have its end-member.</summary>
    internal PhaseDescription Finish(FieldReader phasesFile)
    {
        int ways = sublattices.Aggregate(1, (product, s) => product * s.Constituents.Count);
        return _ends.Count == ways
            ? new PhaseDescription(name, shownAs, isLiquid, sublattices, _ends, _pairs, _triples)
            : throw phasesFile.Wrong("phase", $"{name} has {_ends.Count} end-members in the files, but its sublattices can be filled in {ways} ways");
    }

    private static bool Same(IEnumerable<Element> a, IEnumerable<Element> b) => a.Order().SequenceEqual(b.Order());
}
