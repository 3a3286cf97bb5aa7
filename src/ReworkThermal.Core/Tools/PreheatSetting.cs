using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using UnitsNet;

namespace ReworkThermal.Core.Tools;

/// <summary>A preheater under a board in a room; turns a wish into a boundary condition on the lower face.</summary>
/// <param name="Preheater">The preheater.</param>
/// <param name="Board">The board over it.</param>
/// <param name="Surroundings">The room.</param>
public sealed record PreheatSetting(Preheater Preheater, Board Board, Surroundings Surroundings)
{
    /// <summary>The heater set so that the upper face of the settled board has a temperature, away from joint and rim.</summary>
    /// <param name="boardTop">Wanted temperature, above room temperature.</param>
    /// <returns>The settled condition, or why the heater cannot do it.</returns>
    public SettingOutcome<BottomHeat> ToBoardTemperature(Temperature boardTop)
    {
        double top = boardTop.Kelvins;
        double room = Surroundings.Room.Kelvins;
        if (!double.IsFinite(top) || top <= room)
        {
            return new SettingOutcome<BottomHeat>.Refused(string.Create(
                CultureInfo.InvariantCulture,
                $"a preheat of {boardTop.DegreesCelsius:0.#} °C is not above room temperature ({Surroundings.Room.DegreesCelsius:0.#} °C)"));
        }

        double emissivity = Board.Laminate.Emissivity.Central;
        double flux = (Surroundings.TopConvection.Central.WattsPerSquareMeterKelvin * (top - room)) + (emissivity * PhysicalConstants.StefanBoltzmann * (Fourth(top) - Fourth(room)));
        double bottom = top + (flux * SeriesResistance());
        double needed = flux
            + (RoomConvectionShare * Surroundings.BottomConvection.Central.WattsPerSquareMeterKelvin * (bottom - room))
            + (RoomViewShare * emissivity * PhysicalConstants.StefanBoltzmann * (Fourth(bottom) - Fourth(room)));
        double heater = Preheater.Kind == PreheaterKind.Infrared
            ? Math.Pow(Fourth(bottom) + (needed / (PhysicalConstants.StefanBoltzmann * ExchangeFactor)), 0.25)
            : bottom + (needed / Preheater.Coefficient!.Central.WattsPerSquareMeterKelvin);
        if (heater > Preheater.MostSetting.Kelvins)
        {
            return new SettingOutcome<BottomHeat>.Refused(string.Create(
                CultureInfo.InvariantCulture,
                $"to hold the board at {boardTop.DegreesCelsius:0.#} °C the {Preheater.Name} would need {heater - 273.15:0} °C, above its limit of {Preheater.MostSetting.DegreesCelsius:0} °C"));
        }

        return Ready(new TimeCourse.Constant(Temperature.FromKelvins(heater)), true, heater);
    }

    /// <summary>The heater at a setting, with the board settled over it before the run begins.</summary>
    /// <param name="set">Temperature of plate, air or emitter.</param>
    /// <returns>The settled condition, or why the heater cannot be set so.</returns>
    public SettingOutcome<BottomHeat> Settled(Temperature set) =>
        Fault(set) is { } fault ? new SettingOutcome<BottomHeat>.Refused(fault) : Ready(new TimeCourse.Constant(set), true, set.Kelvins);

    /// <summary>The heater switched on at the start of the run; it climbs no faster than the ramp limit, so neither does the board.</summary>
    /// <param name="set">Temperature of plate, air or emitter.</param>
    /// <param name="start">Temperature it starts from.</param>
    /// <returns>The condition, or why the heater cannot be set so.</returns>
    public SettingOutcome<BottomHeat> FromCold(Temperature set, Temperature start) =>
        Fault(set) is { } fault
            ? new SettingOutcome<BottomHeat>.Refused(fault)
            : Ready(new TimeCourse.Ramp(start, set, Preheater.RampLimit.Central, Duration.Zero), false, set.Kelvins);

    private static double Fourth(double kelvin) => kelvin * kelvin * kelvin * kelvin;

    private double RoomConvectionShare => Preheater.Kind == PreheaterKind.Infrared ? 1 : 0;

    private double RoomViewShare => Preheater.Kind == PreheaterKind.Infrared ? 1 - View : 0;

    private double View => ViewFactor.AlignedRectangles(Preheater.Width.Meters, Preheater.Depth.Meters, Preheater.Gap.Meters);

    // Two grey faces of equal area (Incropera et al., eq. 13.19).
    private double ExchangeFactor
    {
        get
        {
            double face = Preheater.FaceEmissivity!.Central;
            double board = Board.Laminate.Emissivity.Central;
            return 1 / (((1 - face) / face) + (1 / View) + ((1 - board) / board));
        }
    }

    private string? Fault(Temperature set)
    {
        double celsius = set.DegreesCelsius;
        return double.IsFinite(celsius) && celsius >= Surroundings.Room.DegreesCelsius && set <= Preheater.MostSetting
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"the {Preheater.Name} cannot be set to {celsius:0.#} °C; its range is room temperature to {Preheater.MostSetting.DegreesCelsius:0.#} °C");
    }

    private double SeriesResistance()
    {
        double laminate = Board.Laminate.ThroughConductivity.Central.WattsPerMeterKelvin;
        return Board.StackUp.Dielectrics.Sum(d => d.Meters) / laminate;
    }

    private SettingOutcome<BottomHeat> Ready(TimeCourse course, bool settled, double heaterK)
    {
        FaceCondition condition = Preheater.Kind == PreheaterKind.Infrared
            ? new FaceCondition.Radiation(ExchangeFactor, course)
            : new FaceCondition.Convection(Preheater.Coefficient!.Central, course);
        List<string> notes = [string.Create(CultureInfo.InvariantCulture, $"The {Preheater.Name} is at {heaterK - 273.15:0} °C.")];
        double radius = Math.Sqrt(Preheater.Width.Meters * Preheater.Depth.Meters / Math.PI);
        if (radius < Board.EquivalentRadius.Meters)
        {
            notes.Add("The preheater is smaller than the board: the part outside it stays cooler and draws heat.");
        }

        if (Preheater.Kind != PreheaterKind.Infrared)
        {
            notes.Add("Over plate or air heater the lower face is taken to lose nothing to the room.");
        }

        return new SettingOutcome<BottomHeat>.Ready(
            new BottomHeat
            {
                Radius = Length.FromMeters(radius),
                Conditions = [condition],
                RoomConvectionShare = RoomConvectionShare,
                RoomViewShare = RoomViewShare,
                Settled = settled,
                Assumptions = notes,
            },
            notes);
    }
}
