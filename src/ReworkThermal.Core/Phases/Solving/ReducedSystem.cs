using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>The database reduced to the elements present. Immutable and shared between threads.</summary>
internal sealed class ReducedSystem
{
    private ReducedSystem(ThermodynamicDatabase database, Element[] elements, PhaseModel[] models, int liquid)
    {
        Database = database;
        Elements = elements;
        Models = models;
        Liquid = liquid;
    }

    internal ThermodynamicDatabase Database { get; }

    internal Element[] Elements { get; }

    internal PhaseModel[] Models { get; }

    /// <summary>Index of the liquid among the models.</summary>
    internal int Liquid { get; }

    internal static ReducedSystem Of(ThermodynamicDatabase database, Element[] elements)
    {
        List<PhaseModel> models = [];
        int liquid = -1;
        for (int i = 0; i < database.Phases.Count; i++)
        {
            if (Reduce(database.Phases[i], i, models.Count, elements) is { } model)
            {
                liquid = model.IsLiquid ? models.Count : liquid;
                models.Add(model);
            }
        }

        return liquid >= 0
            ? new ReducedSystem(database, elements, [.. models], liquid)
            : throw new ArgumentException("the database has no liquid for these elements", nameof(database));
    }

    private static PhaseModel? Reduce(PhaseDescription phase, int description, int index, Element[] elements)
    {
        List<int> element = [];
        List<int> sublattice = [];
        List<double> share = [];
        List<int> first = [0];
        double atoms = phase.Sublattices.Sum(s => s.Sites);
        for (int s = 0; s < phase.Sublattices.Count; s++)
        {
            foreach (Element constituent in phase.Sublattices[s].Constituents)
            {
                int place = Array.IndexOf(elements, constituent);
                if (place >= 0)
                {
                    element.Add(place);
                    sublattice.Add(s);
                    share.Add(phase.Sublattices[s].Sites / atoms);
                }
            }

            if (element.Count == first[^1])
            {
                return null;
            }

            first.Add(element.Count);
        }

        int Variable(int s, Element e)
        {
            int place = Array.IndexOf(elements, e);
            for (int v = first[s]; v < first[s + 1]; v++)
            {
                if (element[v] == place)
                {
                    return v;
                }
            }

            return -1;
        }

        List<TemperatureExpression> parameters = [];
        List<(int, int)> ends = [];
        foreach (EndMember end in phase.EndMembers)
        {
            int v0 = Variable(0, end.Occupation[0]);
            int v1 = end.Occupation.Count > 1 ? Variable(1, end.Occupation[1]) : -1;
            if (v0 >= 0 && (v1 >= 0 || end.Occupation.Count == 1))
            {
                ends.Add((v0, v1));
                parameters.Add(end.Gibbs);
            }
        }

        List<(int, int, int, int)> pairs = [];
        foreach (BinaryInteraction pair in phase.Pairs)
        {
            int i = Variable(pair.Sublattice, pair.First);
            int j = Variable(pair.Sublattice, pair.Second);
            if (i >= 0 && j >= 0)
            {
                pairs.Add((i, j, parameters.Count, pair.Coefficients.Count));
                parameters.AddRange(pair.Coefficients);
            }
        }

        List<(int, int, int, int)> triples = [];
        foreach (TernaryInteraction triple in phase.Triples)
        {
            int i = Variable(0, triple.Elements[0]);
            int j = Variable(0, triple.Elements[1]);
            int k = Variable(0, triple.Elements[2]);
            if (i >= 0 && j >= 0 && k >= 0)
            {
                triples.Add((i, j, k, parameters.Count));
                parameters.AddRange(triple.Coefficients);
            }
        }

        return new PhaseModel
        {
            Description = description,
            Name = phase.Name,
            IsLiquid = phase.IsLiquid,
            Index = index,
            ElementCount = elements.Length,
            Element = [.. element],
            Sublattice = [.. sublattice],
            First = [.. first],
            Share = [.. share],
            Ends = [.. ends],
            Pairs = [.. pairs],
            Triples = [.. triples],
            Parameters = [.. parameters],
            Atoms = atoms,
        };
    }
}
