using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Thermodynamics;

/// <summary>A phase while its parameters are being collected from several files.</summary>
internal sealed class PhaseDraft(string name, string shownAs, bool isLiquid, IReadOnlyList<Sublattice> sublattices)
{
    private readonly List<EndMember> _ends = [];
    private readonly List<BinaryInteraction> _pairs = [];
    private readonly List<TernaryInteraction> _triples = [];

    internal string Name => name;

    internal bool IsLiquid => isLiquid;

    internal IReadOnlyList<Sublattice> Sublattices => sublattices;

    internal void Add(FieldReader at, EndMember end)
    {
        if (_ends.Exists(e => e.Occupation.SequenceEqual(end.Occupation)))
        {
            throw at.Wrong($"this end-member of {name} is given twice");
        }

        _ends.Add(end);
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
