using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Profiles;

/// <summary>Reads <c>profiles/irons</c>, <c>profiles/contacts</c>, <c>profiles/air</c>, <c>profiles/preheat</c> and <c>profiles/rooms</c>.</summary>
internal static class ToolProfiles
{
    private static readonly Temperature _room = Temperature.FromDegreesCelsius(20);
    private static readonly Temperature _hottest = Temperature.FromDegreesCelsius(600);
    private static readonly TemperatureDelta _mostOffset = TemperatureDelta.FromKelvins(100);


    internal static Iron Iron(ProfileSource file)
    {
        file.Provenance();
        TemperatureDelta offset = file.Fields.Has("display_offset")
            ? file.Fields.Quantity("display_offset", UnitTable.TemperatureDeltas, -_mostOffset, _mostOffset)
            : TemperatureDelta.Zero;
        if (file.Fields.Has("rated_power"))
        {
            return IronClass.Of(
                file.Fields.Text("name"),
                file.Fields.Quantity("rated_power", UnitTable.Powers, Power.FromWatts(1), Power.FromWatts(1000)),
                file.Fields.Quantity("tip_width", UnitTable.Lengths, Length.FromMillimeters(0.1), Length.FromMillimeters(30)),
                offset,
                file.Fields.Quantity("least_setting", UnitTable.Temperatures, _room, _hottest),
                file.Fields.Quantity("most_setting", UnitTable.Temperatures, _room, _hottest));
        }

        return new Iron
        {
            Name = file.Fields.Text("name"),
            DisplayOffset = offset,
            PowerLimit = file.Estimate("power_limit", UnitTable.Powers, Power.FromWatts(1), Power.FromWatts(1000)),
            TipHeatCapacity = file.Estimate("tip_heat_capacity", UnitTable.HeatCapacities, Entropy.FromJoulesPerKelvin(0.01), Entropy.FromJoulesPerKelvin(100)),
            SensorToFaceKelvinPerWatt = file.Estimate("sensor_to_face_k_per_w", 1e-3, 100),
            FaceDiameter = file.Fields.Quantity("face_diameter", UnitTable.Lengths, Length.FromMillimeters(0.1), Length.FromMillimeters(30)),
            LeastSetting = file.Fields.Quantity("least_setting", UnitTable.Temperatures, _room, _hottest),
            MostSetting = file.Fields.Quantity("most_setting", UnitTable.Temperatures, _room, _hottest),
        };
    }

    internal static TipContact Contact(ProfileSource file) => new(
        file.Fields.OneOf<ContactState>("state"),
        file.Estimate("at_touch_down", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1)),
        file.Estimate("wetted", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(1)),
        file.Estimate("wetting_time", UnitTable.Durations, Duration.FromMilliseconds(1), Duration.FromMinutes(1)),
        file.Fields.Truth("waits_for_melt"));

    internal static AirNozzle Nozzle(ProfileSource file)
    {
        file.Provenance();
        return new AirNozzle
        {
            Name = file.Fields.Text("name"),
            Diameter = file.Fields.Quantity("diameter", UnitTable.Lengths, Length.FromMillimeters(0.5), Length.FromMillimeters(50)),
            LeastFlow = file.Fields.Quantity("least_flow", UnitTable.VolumeFlows, VolumeFlow.Zero),
            MostFlow = file.Fields.Quantity("most_flow", UnitTable.VolumeFlows, VolumeFlow.Zero),
            MostSetting = file.Fields.Quantity("most_setting", UnitTable.Temperatures, _room, Temperature.FromDegreesCelsius(700)),
            ExcessKept = file.Estimate("excess_kept", 0.1, 1),
        };
    }

    internal static Preheater Preheater(ProfileSource file)
    {
        file.Provenance();
        PreheaterKind kind = file.Fields.OneOf<PreheaterKind>("kind");
        bool emits = kind == PreheaterKind.Infrared;
        return new Preheater
        {
            Name = file.Fields.Text("name"),
            Kind = kind,
            Width = file.Fields.Quantity("width", UnitTable.Lengths, Length.FromMillimeters(5)),
            Depth = file.Fields.Quantity("depth", UnitTable.Lengths, Length.FromMillimeters(5)),
            Gap = file.Fields.Quantity("gap", UnitTable.Lengths, Length.Zero),
            MostSetting = file.Fields.Quantity("most_setting", UnitTable.Temperatures, _room, Temperature.FromDegreesCelsius(900)),
            Coefficient = emits ? null : file.Estimate("coefficient", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.Zero),
            FaceEmissivity = emits ? file.Estimate("face_emissivity", 0.01, 1) : null,
            RampLimit = file.Estimate("ramp_limit", UnitTable.TemperatureRates, TemperatureChangeRate.FromDegreesCelsiusPerSecond(0.01)),
        };
    }

    internal static Surroundings Room(ProfileSource file)
    {
        file.Provenance();
        _ = file.Fields.Text("name");
        return new Surroundings
        {
            Room = file.Fields.Quantity("room", UnitTable.Temperatures, Temperature.FromDegreesCelsius(-20), Temperature.FromDegreesCelsius(60)),
            TopConvection = file.Estimate("top_convection", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.Zero),
            BottomConvection = file.Estimate("bottom_convection", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.Zero),
        };
    }
}
