using ReworkThermal.Core.Damage;
using ReworkThermal.Data.Toml;

namespace ReworkThermal.Data.Limits;

/// <summary>
/// Reads the folder <c>profiles/limits</c>: classes of laminate, damage figures and assumptions about earlier heat.
/// </summary>
public static class LimitsFolder
{
    /// <summary>Reads and checks the three files.</summary>
    /// <param name="root">Where the data are.</param>
    /// <returns>What they say.</returns>
    /// <exception cref="DataFileException">A file is missing or not in order; the message names file, line and field.</exception>
    public static DamageLimits Load(DataRoot root)
    {
        ArgumentNullException.ThrowIfNull(root);
        RatedFields rated = new(Bibliography.Load(Path.Combine(root.Profiles, "sources.toml")));
        string folder = Path.Combine(root.Profiles, "limits");
        return new DamageLimits(
            LaminateClassReader.Read(FieldReader.Open(Path.Combine(folder, "laminate-classes.toml")), rated),
            DamageParameterReader.Read(FieldReader.Open(Path.Combine(folder, "damage.toml")), rated),
            PriorHeatReader.Read(FieldReader.Open(Path.Combine(folder, "prior-heat.toml")), rated));
    }
}
