using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Data;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Thermodynamics;

namespace ReworkThermal.App.Commands;

/// <summary>What commands about melting need: the phase engine and the alloys, read from the data folders.</summary>
internal sealed class MeltingShelf
{
    private readonly DataRoot _root;
    private readonly ThermodynamicDatabase _database;

    /// <summary>Reads the data folders.</summary>
    /// <param name="root">Where they are.</param>
    internal MeltingShelf(DataRoot root)
    {
        _root = root;
        _database = ThermodynamicFiles.Load(root);
        Alloys = AlloyShelf.Load(root);
        Engine = new PhaseEngine(_database);
    }

    /// <summary>Solders, dilution alloys, density rules.</summary>
    internal AlloyShelf Alloys { get; }

    /// <summary>The phase engine.</summary>
    internal PhaseEngine Engine { get; }

    private string Folder => Path.Combine(_root.Alloys, "thermodynamics");

    /// <summary>Citations of the assessments that the melting of a solder rests on.</summary>
    /// <param name="solder">Composition by mass.</param>
    /// <returns>Full citations, each once.</returns>
    internal IReadOnlyList<string> SourcesFor(MassFractions solder) => Citations.Of(
        _database.Systems
            .Where(s => s.Elements.All(e => solder[e] > 0))
            .Select(s => Path.Combine(Folder, s.File)),
        Alloys.Sources);
}
