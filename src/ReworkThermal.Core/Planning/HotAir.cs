using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning;

/// <summary>A hot-air nozzle over the joint.</summary>
/// <param name="Nozzle">The nozzle.</param>
/// <param name="Flow">Flow of free air.</param>
/// <param name="Distance">Distance of nozzle and board.</param>
public sealed record HotAir(AirNozzle Nozzle, VolumeFlow Flow, Length Distance)
{
    /// <summary>Coefficient of the jet over that of the correlation; 1 unless a calibration or a sample says otherwise.</summary>
    public double FilmFactor { get; init; } = 1;
}
