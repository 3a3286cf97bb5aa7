using ReworkThermal.Core.Composition;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Alloys;

/// <summary>Reads solders and dilution alloys, one TOML file each.</summary>
internal static class AlloyFiles
{
    private static readonly Temperature _coldest = Temperature.FromDegreesCelsius(40);
    private static readonly Temperature _hottest = Temperature.FromDegreesCelsius(400);

    /// <summary>Reads alloys, in name order.</summary>
    /// <param name="root">Where the data folders are.</param>
    /// <param name="folder">Folder below the root whose files hold one alloy each.</param>
    /// <returns>The alloys.</returns>
    /// <exception cref="DataFileException">A file is not in order, or two files name the same alloy.</exception>
    internal static IReadOnlyList<Alloy> ReadAll(DataRoot root, string folder)
    {
        SortedDictionary<string, Alloy> alloys = new(StringComparer.Ordinal);
        foreach (string path in root.Files(folder))
        {
            try
            {
                Add(Read(path), path, alloys);
            }
            catch (DataFileException broken) when (root.LeavesOut(path, broken))
            {
                // Said at the end of the command.
            }
        }

        return [.. alloys.Values];
    }

    private static void Add(Alloy alloy, string path, SortedDictionary<string, Alloy> alloys)
    {
        if (!alloys.TryAdd(alloy.Name, alloy))
        {
            throw new DataFileException([new DataFileProblem(path, 1, "name", $"'{BadValue.Shown(alloy.Name)}' is already the name of another alloy of this folder; a file of your own stands in for a shipped one of the same file name")]);
        }
    }

    /// <summary>Reads one alloy file.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The alloy.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    internal static Alloy Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        string name = file.Text("name");
        MassFractions fractions = AlloyDesignation.Read(file.Text("composition")).OrThrow(reason => file.Wrong("composition", reason));
        FieldReader melting = file.Table("melting");
        Alloy alloy = new(
            name,
            fractions,
            file.Text("family"),
            file.Texts("forms"),
            ReadMelting(melting),
            file.Texts("cautions"),
            !file.Has("usual") || file.Truth("usual"));
        bool declared = file.Truth("lead_free");
        file.Finish();
        return declared == alloy.IsLeadFree
            ? alloy
            : throw file.Wrong("lead_free", $"says {(declared ? "true" : "false")}, but the composition holds {(alloy.IsLeadFree ? "no" : "more than 0.1 %")} lead");
    }

    private static PublishedMelting ReadMelting(FieldReader melting)
    {
        Temperature solidus = melting.Quantity("solidus", UnitTable.Temperatures, _coldest, _hottest);
        Temperature liquidus = melting.Quantity("liquidus", UnitTable.Temperatures, _coldest, _hottest);
        return liquidus >= solidus
            ? new PublishedMelting(solidus, liquidus, melting.Provenance(), melting.TextOrNull("note") ?? string.Empty, melting.Has("arrest") && melting.Truth("arrest"))
            : throw melting.Wrong("liquidus", "must not be below the solidus");
    }
}
