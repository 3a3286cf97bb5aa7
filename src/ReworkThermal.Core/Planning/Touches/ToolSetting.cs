using System.Globalization;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Touches;

/// <summary>How the tools are set for a touch: an iron, hot air, or an iron helped by hot air, with or without heat from below.</summary>
/// <param name="Iron">The iron with its tip; null when hot air does it alone.</param>
/// <param name="Set">Set temperature of the iron, or of the air that does it alone.</param>
/// <param name="Preheat">Heat from below; null for none.</param>
/// <param name="Air">Hot air that does it alone; null when an iron is used.</param>
/// <param name="Assist">Hot air that helps the iron; null when there is none, or no iron.</param>
public sealed record ToolSetting(Iron? Iron, Temperature Set, BoardHeat? Preheat, HotAir? Air = null, AirAssist? Assist = null)
{
    /// <summary>How long air blows before the touch itself begins.</summary>
    public Duration Lead => Assist?.Lead ?? Duration.Zero;

    /// <summary>What is on the joint and how it is set, for sentences.</summary>
    public string OnTheJoint => string.Create(
        CultureInfo.InvariantCulture,
        $"{Iron?.Name ?? Air?.Nozzle.Name} at {Set.DegreesCelsius:0} °C{(Assist is { } help ? Helped(help) : string.Empty)}");

    private static string Helped(AirAssist help) => string.Create(
        CultureInfo.InvariantCulture,
        $" after {help.Lead.Seconds:0.#} s of air, {help.Air.Nozzle.Name} at {help.Set.DegreesCelsius:0} °C");
}

/// <summary>A hot-air nozzle over the joint.</summary>
/// <param name="Nozzle">The nozzle.</param>
/// <param name="Flow">Flow of free air.</param>
/// <param name="Distance">Distance of nozzle and board.</param>
public sealed record HotAir(AirNozzle Nozzle, VolumeFlow Flow, Length Distance)
{
    /// <summary>Coefficient of the jet over that of the correlation; 1 unless a calibration or a sample says otherwise.</summary>
    public double FilmFactor { get; init; } = 1;
}

/// <summary>Hot air that warms a joint before an iron touches it, and goes on until the iron is lifted.</summary>
/// <param name="Air">The nozzle over the joint.</param>
/// <param name="Set">Set temperature of the air.</param>
/// <param name="Lead">How long the air blows before the iron touches, zero or more.</param>
public sealed record AirAssist(HotAir Air, Temperature Set, Duration Lead);

/// <summary>A preheater, set so that the board settles at a temperature.</summary>
/// <param name="Preheater">The preheater.</param>
/// <param name="Board">Temperature of the settled board's upper face, away from joint and rim.</param>
public sealed record BoardHeat(Preheater Preheater, Temperature Board);
