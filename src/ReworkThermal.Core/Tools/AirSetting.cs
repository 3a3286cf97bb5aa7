using System.Globalization;
using ReworkThermal.Core.HeatFlow.Boundaries;
using UnitsNet;

namespace ReworkThermal.Core.Tools;

/// <summary>A hot-air nozzle over the joint and what it is set to.</summary>
/// <param name="Nozzle">The nozzle.</param>
/// <param name="Set">Set temperature of the air.</param>
/// <param name="Flow">Flow of free air at 20 °C.</param>
/// <param name="Distance">Distance of nozzle and board.</param>
/// <param name="Room">Room temperature, that of the air the jet draws in.</param>
public sealed record AirSetting(AirNozzle Nozzle, Temperature Set, VolumeFlow Flow, Length Distance, Temperature Room)
{
    // Board temperature for the properties of the film of air. 100 K more or less moves the coefficient by 4 %.
    private const double FilmBoardCelsius = 150;

    private const int ProfilePoints = 21;

    /// <summary>Reynolds number at the nozzle, 4 m / (pi D mu), with the viscosity of the film between jet and board.</summary>
    public double Reynolds
    {
        get
        {
            double kilogramsPerSecond = Flow.CubicMetersPerSecond * AirProperties.DensityAt20C;
            return 4 * kilogramsPerSecond / (Math.PI * Nozzle.Diameter.Meters * AirProperties.Viscosity(FilmK));
        }
    }

    /// <summary>Heat that the air carries above room temperature: a ceiling that no joint can exceed.</summary>
    public Power Ceiling => Power.FromWatts(Flow.CubicMetersPerSecond * AirProperties.DensityAt20C * AirProperties.SpecificHeat * (Set.Kelvins - Room.Kelvins));

    private double FilmK => ((Set.DegreesCelsius + FilmBoardCelsius) / 2) + 273.15;

    /// <summary>The setting as a jet on the board.</summary>
    /// <returns>The jet, or why it is outside the nozzle's or the correlation's range.</returns>
    public SettingOutcome<JetSource> ToSource()
    {
        if (Fault() is { } fault)
        {
            return new SettingOutcome<JetSource>.Refused(fault);
        }

        double diameter = Nozzle.Diameter.Meters;
        double distance = Distance.Meters / diameter;
        double scale = AirProperties.Conductivity(FilmK) / diameter;
        double inside = scale * RoundJet.MeanNusselt(Reynolds, AirProperties.Prandtl, distance, RoundJet.LeastRadius);
        List<Length> radii = [Length.Zero, Length.FromMeters(RoundJet.LeastRadius * diameter * (1 - 1e-6))];
        List<HeatTransferCoefficient> coefficients = [Coefficient(inside), Coefficient(inside)];
        for (int i = 0; i < ProfilePoints; i++)
        {
            double radius = RoundJet.LeastRadius + ((RoundJet.MostRadius - RoundJet.LeastRadius) * i / (ProfilePoints - 1));
            radii.Add(Length.FromMeters(radius * diameter));
            coefficients.Add(Coefficient(scale * RoundJet.LocalNusselt(Reynolds, AirProperties.Prandtl, distance, radius)));
        }

        double kept = Nozzle.ExcessKept.Central;
        Temperature gas = Temperature.FromKelvins(Room.Kelvins + (kept * (Set.Kelvins - Room.Kelvins)));
        return new SettingOutcome<JetSource>.Ready(new JetSource(Nozzle.Name, gas, radii, coefficients), Notes(inside));
    }

    private static HeatTransferCoefficient Coefficient(double value) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(value);

    private string? Fault()
    {
        double set = Set.DegreesCelsius;
        if (!double.IsFinite(set) || set <= Room.DegreesCelsius || set > Nozzle.MostSetting.DegreesCelsius)
        {
            return string.Create(CultureInfo.InvariantCulture, $"air of {set:0.#} °C is outside the range of the {Nozzle.Name}: above room temperature, up to {Nozzle.MostSetting.DegreesCelsius:0.#} °C");
        }

        double flow = Flow.LitersPerMinute;
        if (!double.IsFinite(flow) || Flow < Nozzle.LeastFlow || Flow > Nozzle.MostFlow)
        {
            return string.Create(CultureInfo.InvariantCulture, $"a flow of {flow:0.#} L/min is outside the range of the {Nozzle.Name}: {Nozzle.LeastFlow.LitersPerMinute:0.#} to {Nozzle.MostFlow.LitersPerMinute:0.#} L/min");
        }

        double distance = Distance.Meters / Nozzle.Diameter.Meters;
        if (!(distance is >= RoundJet.LeastDistance and <= RoundJet.MostDistance))
        {
            return string.Create(CultureInfo.InvariantCulture, $"a distance of {distance:0.##} nozzle diameters is outside the jet correlation; hold the nozzle {RoundJet.LeastDistance * Nozzle.Diameter.Millimeters:0.#} to {RoundJet.MostDistance * Nozzle.Diameter.Millimeters:0.#} mm away");
        }

        return Reynolds is >= RoundJet.LeastReynolds and <= RoundJet.MostReynolds
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"the jet's Reynolds number of {Reynolds:0} is outside the correlation ({RoundJet.LeastReynolds:0} to {RoundJet.MostReynolds:0}); change the flow or the nozzle");
    }

    private string[] Notes(double inside) =>
    [
        string.Create(CultureInfo.InvariantCulture, $"Within {RoundJet.LeastRadius:0.#} nozzle diameters of the axis the correlation does not hold; its mean over that disc, {inside:0} W/m2K, is used there, good to about 40 % (practice)."),
        string.Create(CultureInfo.InvariantCulture, $"The jet keeps {Nozzle.ExcessKept.Central:0.##} ({Nozzle.ExcessKept.Low:0.##} to {Nozzle.ExcessKept.High:0.##}) of its excess temperature on its way to the board; no formula was found for it."),
        string.Create(CultureInfo.InvariantCulture, $"The air carries at most {(double)Ceiling.Watts:0} W above room temperature."),
    ];
}
