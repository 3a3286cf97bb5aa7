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
        RatedFields rated = new(root.SourcesOf("profiles"));
        return new DamageLimits(
            LaminateClassReader.Read(FieldReader.Open(root.File("profiles/limits/laminate-classes.toml")), rated),
            DamageParameterReader.Read(FieldReader.Open(root.File("profiles/limits/damage.toml")), rated),
            PriorHeatReader.Read(FieldReader.Open(root.File("profiles/limits/prior-heat.toml")), rated));
    }
}
