using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;

namespace ReworkThermal.Data.Alloys;

/// <summary>Everything about alloys that is known here: solders, dilution alloys, properties of the elements.</summary>
/// <param name="Solders">Alloys that joints are made with.</param>
/// <param name="Dilutions">Alloys that are mixed into a joint to make it flow at a lower temperature.</param>
/// <param name="Properties">Density and conductivity rules.</param>
/// <param name="Sources">Bibliography of the folder.</param>
public sealed record AlloyShelf(
    IReadOnlyList<Alloy> Solders,
    IReadOnlyList<Alloy> Dilutions,
    SolderProperties Properties,
    Bibliography Sources)
{
    private const double SameShare = 1e-5;

    /// <summary>Dilution alloys that a plan tries when none are named.</summary>
    public IReadOnlyList<Alloy> UsualDilutions => [.. Dilutions.Where(a => a.IsUsual)];

    /// <summary>The listed alloys that have a composition, solders first.</summary>
    /// <param name="composition">The composition.</param>
    /// <returns>Alloys of this composition to 0.001 % of each element.</returns>
    public IEnumerable<Alloy> Listed(MassFractions composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return Solders.Concat(Dilutions).Where(a =>
            Math.Abs(a.Fractions.InertTrace - composition.InertTrace) < SameShare
            && ElementData.All.All(e => Math.Abs(a.Fractions[e] - composition[e]) < SameShare));
    }

    /// <summary>Reads the folder.</summary>
    /// <param name="root">Where the data folders are.</param>
    /// <returns>The shelf.</returns>
    /// <exception cref="DataFileException">A file is missing or not in order.</exception>
    public static AlloyShelf Load(DataRoot root)
    {
        ArgumentNullException.ThrowIfNull(root);
        return new AlloyShelf(
            AlloyFiles.ReadAll(root, "alloys/solders"),
            AlloyFiles.ReadAll(root, "alloys/dilution"),
            ElementFile.Read(root.File("alloys/elements.toml")),
            root.SourcesOf("alloys"));
    }

    /// <summary>Finds an alloy by name, or reads a designation that is in neither list.</summary>
    /// <param name="text">Name or designation.</param>
    /// <returns>The composition, or the reason why the text cannot be used.</returns>
    public DesignationReading Find(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        Alloy? known = Solders.Concat(Dilutions).FirstOrDefault(a => string.Equals(a.Name, text, StringComparison.OrdinalIgnoreCase));
        return known is null ? AlloyDesignation.Read(text) : new DesignationReading.Accepted(known.Fractions, []);
    }
}
