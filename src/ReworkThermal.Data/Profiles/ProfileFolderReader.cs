using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Profiles;

/// <summary>Reads every TOML file of a folder under <c>profiles</c>, collecting complaints instead of stopping at the first.</summary>
internal sealed class ProfileFolderReader(DataRoot root, Bibliography bibliography)
{
    private readonly List<DataFileProblem> _problems = [];

    /// <summary>Reads a folder, in order of file name; a missing folder holds no files.</summary>
    internal void ReadAll<T>(string folder, Func<ProfileSource, T> read, Action<string, T> keep)
    {
        foreach (string file in root.Files($"profiles/{folder}"))
        {
            try
            {
                FieldReader fields = FieldReader.Open(file, root.Shown(file));
                T profile = read(new ProfileSource(fields, bibliography));
                fields.Finish();
                keep(Path.GetFileNameWithoutExtension(file), profile);
            }
            catch (DataFileException broken)
            {
                if (root.LeavesOut(file, broken))
                {
                    continue;
                }

                _problems.AddRange(broken.Problems);
            }
        }
    }

    /// <summary>Notes a complaint about a folder as a whole unless a condition holds.</summary>
    internal void Require(bool condition, string folder, string rule)
    {
        if (!condition)
        {
            _problems.Add(new DataFileProblem(Path.Combine("profiles", folder), 0, string.Empty, rule));
        }
    }

    /// <summary>Throws all complaints together, if there are any.</summary>
    internal void Finish()
    {
        if (_problems.Count > 0)
        {
            throw new DataFileException(_problems);
        }
    }
}
