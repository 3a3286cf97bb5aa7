using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Thermodynamics;

/// <summary>Collects functions, phases and parameters from several files and checks that they fit together.</summary>
/// <param name="sources">Bibliography that every source key must be in.</param>
internal sealed class DatabaseAssembly(Bibliography sources)
{
    private readonly List<GibbsFunction> _functions = [];
    private readonly Dictionary<string, int> _functionIndex = new(StringComparer.Ordinal);
    private readonly List<PhaseDraft> _phases = [];
    private readonly List<SystemDescription> _systems = [];

    /// <summary>The field <c>units</c> must say that energies are in J/mol.</summary>
    internal static void RequireUnits(FieldReader file)
    {
        if (file.Text("units") != "J/mol")
        {
            throw file.Wrong("units", "must be \"J/mol\": the parameters of this folder are in joule per mole");
        }
    }

    /// <summary>The fields <c>source</c> and <c>mark</c> must be there, and the source in the bibliography.</summary>
    internal ReworkThermal.Core.Evidence.Provenance RequireSource(FieldReader table)
    {
        ReworkThermal.Core.Evidence.Provenance provenance = table.Provenance();
        return sources.Cite(provenance.Source) is null
            ? throw table.Wrong("source", $"'{provenance.Source}' is not in sources.toml")
            : provenance;
    }

    internal void AddFunctions(FieldReader file)
    {
        foreach (FieldReader table in file.Tables("function"))
        {
            string name = table.Text("name");
            table.Text("meaning");
            RequireSource(table);
            if (!_functionIndex.TryAdd(name, _functions.Count))
            {
                throw table.Wrong("name", $"'{name}' is defined twice");
            }

            _functions.Add(new GibbsFunction(name, GibbsTerms.Pieces(table, "pieces")));
        }
    }

    internal void AddPhases(FieldReader file)
    {
        foreach (FieldReader table in file.Tables("phase"))
        {
            List<Sublattice> sublattices = [];
            foreach (FieldReader sublattice in table.Tables("sublattices"))
            {
                sublattices.Add(new Sublattice(sublattice.Number("sites", 1e-6, 100), Elements(sublattice, "constituents")));
            }

            if (sublattices.Count is 0 or > 2)
            {
                throw table.Wrong("sublattices", "must have one or two entries");
            }

            table.TextOrNull("note");
            _phases.Add(new PhaseDraft(table.Text("name"), table.Text("shown_as"), table.Truth("liquid"), sublattices));
        }
    }

    internal void AddEndMembers(FieldReader file)
    {
        foreach (FieldReader table in file.Tables("end_member"))
        {
            RequireSource(table);
            table.TextOrNull("note");
            PhaseDraft phase = Phase(table);
            IReadOnlyList<Element> occupation = Elements(table, "elements");
            if (occupation.Count != phase.Sublattices.Count || occupation.Where((e, s) => !phase.Sublattices[s].Constituents.Contains(e)).Any())
            {
                throw table.Wrong("elements", $"must name one constituent for each of the {phase.Sublattices.Count} sublattices of {phase.Name}");
            }

            List<FunctionShare> shares = [];
            if (table.TableOrNull("shares") is { } list)
            {
                foreach (string name in list.Names.ToList())
                {
                    double times = list.Number(name, 0, 100);
                    shares.Add(_functionIndex.TryGetValue(name, out int function)
                        ? new FunctionShare(function, times)
                        : throw list.Wrong(name, "is not a function of unary.toml"));
                }
            }

            IReadOnlyList<GibbsPiece> plus = table.Has("plus") ? GibbsTerms.Pieces(table, "plus") : [];
            phase.Add(table, new EndMember(occupation, new TemperatureExpression(shares, plus)), _functions);
        }
    }

    internal void AddSystem(FieldReader file, string name, bool own)
    {
        RequireUnits(file);
        IReadOnlyList<Element> elements = Elements(file, "elements");
        AddPhases(file);
        foreach (FieldReader table in file.Tables("interaction"))
        {
            AddInteraction(table, elements);
        }

        AddEndMembers(file);
        _systems.Add(SystemHeader.Read(file, name, elements, this) with { IsOwn = own });
    }

    internal ThermodynamicDatabase Build(double gasConstant, double lowest, double highest, UncertaintyRule uncertainty, NickelRule nickel, FieldReader phasesFile)
    {
        if (_phases.Count(p => p.IsLiquid) != 1)
        {
            throw phasesFile.Wrong("phase", "exactly one phase must be liquid");
        }

        return new ThermodynamicDatabase(gasConstant, lowest, highest, _functions, [.. _phases.Select(p => p.Finish(phasesFile))], _systems, uncertainty, nickel);
    }

    /// <summary>A list of element symbols.</summary>
    internal static IReadOnlyList<Element> Elements(FieldReader table, string name) =>
        [.. table.Texts(name).Select(symbol => ElementData.TryParseSymbol(symbol, out Element element)
            ? element
            : throw table.Wrong(name, $"'{symbol}' is not one of the modelled elements"))];

    /// <summary>A phase that must exist.</summary>
    internal bool HasPhase(string name) => _phases.Exists(p => p.Name == name);

    private void AddInteraction(FieldReader table, IReadOnlyList<Element> system)
    {
        RequireSource(table);
        table.TextOrNull("note");
        PhaseDraft phase = Phase(table);
        IReadOnlyList<Element> elements = Elements(table, "elements");
        int sublattice = table.Has("sublattice") ? table.Whole("sublattice", 1, phase.Sublattices.Count) - 1 : 0;
        if (elements.Count is not (2 or 3) || elements.Any(e => !phase.Sublattices[sublattice].Constituents.Contains(e) || !system.Contains(e)))
        {
            throw table.Wrong("elements", $"must be two or three elements of this system that {phase.Name} may hold");
        }

        IReadOnlyList<TemperatureExpression> terms = [.. GibbsTerms.Pieces(table, "terms").Select(piece => new TemperatureExpression([], [piece]))];
        if (elements.Count == 2)
        {
            phase.Add(table, new BinaryInteraction(sublattice, elements[0], elements[1], terms));
            return;
        }

        phase.Add(table, terms.Count switch
        {
            1 => new TernaryInteraction(elements, [terms[0], terms[0], terms[0]]),
            3 => new TernaryInteraction(elements, terms),
            _ => throw table.Wrong("terms", "of a ternary interaction must be one (symmetric) or three"),
        });
    }

    private PhaseDraft Phase(FieldReader table)
    {
        string name = table.Text("phase");
        return _phases.Find(p => p.Name == name) ?? throw table.Wrong("phase", $"'{name}' is not a phase of phases.toml");
    }
}
