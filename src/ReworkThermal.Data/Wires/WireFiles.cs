using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs.Wiring;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Wires;

/// <summary>Reads kinds of jumper wire from <c>profiles/wires</c> and their limits from <c>profiles/limits/jumper-wires.toml</c>.</summary>
public static class WireFiles
{
    /// <summary>Reads one kind of wire.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    public static WireKind LoadKind(string path)
    {
        FieldReader root = FieldReader.Open(path);
        bool insulated = root.Truth("insulated");
        WireKind kind = new(
            root.Text("name"),
            insulated,
            insulated ? root.Estimate("rating", UnitTable.Temperatures, Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(500)) : null,
            root.Estimate("wall", UnitTable.Lengths, Length.Zero, Length.FromMillimeters(5)),
            root.Estimate("relative_permittivity", 1, 20),
            root.Estimate("emissivity", 0, 1),
            root.Has("strips_at") ? root.Estimate("strips_at", UnitTable.Temperatures, Temperature.FromDegreesCelsius(100), Temperature.FromDegreesCelsius(600)) : null);
        root.Finish();
        return kind;
    }

    /// <summary>Reads the limits.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    public static WireLimits LoadLimits(string path)
    {
        FieldReader root = FieldReader.Open(path);
        BitRate none = BitRate.FromBitsPerSecond(0);
        WireLimits limits = new(
            Share(root, "preece_share"),
            root.Estimate("current_density_a_per_mm2", 0, 1000),
            Share(root, "drop_share_of_supply"),
            Share(root, "skew_share_of_bit_time"),
            root.Estimate("try_and_test_above", UnitTable.BitRates, none),
            root.Estimate("seldom_repairable_above", UnitTable.BitRates, none));
        root.Finish();
        return limits;
    }

    private static Estimate<double> Share(FieldReader root, string name) => root.Estimate(name, 0, 1);
}
