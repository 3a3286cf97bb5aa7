using ReworkThermal.Core.Mixing;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Alloys;

/// <summary>Reads the ways of taking solder out of a joint, one TOML file each.</summary>
public static class RemovalFiles
{
    /// <summary>Reads every removal method of a folder, in file-name order.</summary>
    /// <param name="root">Where the data folders are.</param>
    /// <returns>The methods.</returns>
    /// <exception cref="DataFileException">A file is not in order.</exception>
    public static IReadOnlyList<RemovalMethod> Load(DataRoot root)
    {
        ArgumentNullException.ThrowIfNull(root);
        List<RemovalMethod> methods = [];
        foreach (string path in root.Files("profiles/removal"))
        {
            try
            {
                methods.Add(Read(path));
            }
            catch (DataFileException broken) when (root.LeavesOut(path, broken))
            {
                // Said at the end of the command.
            }
        }

        return methods;
    }

    private static RemovalMethod Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        RemovalMethod method = new(
            file.Text("name"),
            file.Estimate("efficiency", UnitTable.Ratios, Ratio.Zero, Ratio.FromPercent(100)),
            file.Text("note"));
        file.Finish();
        return method;
    }
}
