using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data;
using ReworkThermal.Data.Profiles;
using UnitsNet;

namespace ReworkThermal.Benchmarks;

/// <summary>The demo's jack anchor on its six-layer board, with lead-free solder in round figures.</summary>
internal static class DemoJoint
{
    internal static JointProblem Problem(double seconds)
    {
        ProfileLibrary library = ProfileLibrary.Load(DataRoot.BesideProgram);
        Board board = library.Boards["six-layer-controller"];
        Surroundings room = library.Rooms["still-air"];
        IronSetting iron = new(library.Irons["heavy"], Celsius(370), library.Contacts[ContactState.Flooded]);
        PreheatSetting plate = new(library.Preheaters["hot-plate"], board, room);
        return new JointProblem
        {
            Site = library.Joints["jack-anchor-six-layer"].On(board),
            Solder = EnthalpyCurve.Melting(
                Celsius(217),
                Celsius(220),
                SpecificEnergy.FromKilojoulesPerKilogram(60),
                SpecificEntropy.FromJoulesPerKilogramKelvin(230),
                SpecificEntropy.FromJoulesPerKilogramKelvin(240),
                Density.FromKilogramsPerCubicMeter(7400),
                ThermalConductivity.FromWattsPerMeterKelvin(58),
                ThermalConductivity.FromWattsPerMeterKelvin(30)),
            FlowTemperature = Celsius(219),
            Superheat = TemperatureDelta.FromKelvins(15),
            Surroundings = room,
            Start = room.Room,
            Preheat = Ready(plate.ToBoardTemperature(Celsius(110))),
            Touches = [new Touch { Start = Duration.Zero, Span = Duration.FromSeconds(8), Side = BoardSide.Bottom, Tip = Ready(iron.ToSource()) }],
            End = Duration.FromSeconds(seconds),
        };
    }

    /// <summary>The same joint from the room's temperature under hot air.</summary>
    internal static JointProblem UnderAir(double seconds)
    {
        ProfileLibrary library = ProfileLibrary.Load(DataRoot.BesideProgram);
        JointProblem iron = Problem(seconds);
        AirSetting air = new(library.Nozzles["round-6"], Celsius(420), VolumeFlow.FromLitersPerMinute(40), Length.FromMillimeters(18), iron.Surroundings.Room);
        return iron with
        {
            Preheat = null,
            Touches = [new Touch { Start = Duration.Zero, Span = Duration.FromSeconds(seconds), Side = BoardSide.Bottom, Jet = Ready(air.ToSource()) }],
        };
    }

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static T Ready<T>(SettingOutcome<T> outcome) => outcome is SettingOutcome<T>.Ready ready
        ? ready.Source
        : throw new InvalidOperationException("the demo's tools can be set so");
}
