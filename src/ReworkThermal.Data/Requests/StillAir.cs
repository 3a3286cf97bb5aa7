using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Requests;

/// <summary>Convection of a board in still room air.</summary>
/// <param name="Top">Coefficient at the upper face, without radiation.</param>
/// <param name="Bottom">Coefficient at the lower face, without radiation.</param>
public sealed record StillAir(Estimate<HeatTransferCoefficient> Top, Estimate<HeatTransferCoefficient> Bottom)
{
    /// <summary>The room at a temperature.</summary>
    /// <param name="temperature">Temperature of air and walls.</param>
    /// <returns>The surroundings.</returns>
    public Surroundings At(Temperature temperature) => new() { Room = temperature, TopConvection = Top, BottomConvection = Bottom };

    /// <summary>Reads <c>room.toml</c>.</summary>
    /// <param name="path">Path of the file.</param>
    /// <returns>The figures.</returns>
    /// <exception cref="DataFileException">The file is missing or not in order.</exception>
    internal static StillAir Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        StillAir air = new(
            file.Estimate("top_convection", UnitTable.HeatTransferCoefficients),
            file.Estimate("bottom_convection", UnitTable.HeatTransferCoefficients));
        file.Finish();
        return air;
    }
}
