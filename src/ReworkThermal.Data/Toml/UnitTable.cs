using UnitsNet;
using UnitsNet.Units;

namespace ReworkThermal.Data.Toml;

/// <summary>
/// The units a data file may use, per kind of quantity. Reading is by exact text, so that a typing error is caught instead of
/// guessed at, and by the invariant culture. UnitsNet knows thermal resistance per area only; a resistance in K/W is a plain number in a
/// field whose name ends in <c>_k_per_w</c>.
/// </summary>
internal static class UnitTable
{
    internal static readonly Quantity<Length, LengthUnit> Lengths = new("a length", (n, u) => Length.From(n, u), new()
    {
        ["m"] = LengthUnit.Meter,
        ["cm"] = LengthUnit.Centimeter,
        ["mm"] = LengthUnit.Millimeter,
        ["um"] = LengthUnit.Micrometer,
        ["µm"] = LengthUnit.Micrometer,
        ["in"] = LengthUnit.Inch,
        ["mil"] = LengthUnit.Mil,
    });

    internal static readonly Quantity<Area, AreaUnit> Areas = new("an area", (n, u) => Area.From(n, u), new()
    {
        ["m2"] = AreaUnit.SquareMeter,
        ["cm2"] = AreaUnit.SquareCentimeter,
        ["mm2"] = AreaUnit.SquareMillimeter,
    });

    internal static readonly Quantity<Temperature, TemperatureUnit> Temperatures = new("a temperature", (n, u) => Temperature.From(n, u), new()
    {
        ["C"] = TemperatureUnit.DegreeCelsius,
        ["°C"] = TemperatureUnit.DegreeCelsius,
        ["K"] = TemperatureUnit.Kelvin,
        ["F"] = TemperatureUnit.DegreeFahrenheit,
        ["°F"] = TemperatureUnit.DegreeFahrenheit,
    });

    internal static readonly Quantity<TemperatureDelta, TemperatureDeltaUnit> TemperatureDeltas = new("a temperature difference", (n, u) => TemperatureDelta.From(n, u), new()
    {
        ["K"] = TemperatureDeltaUnit.Kelvin,
    });

    internal static readonly Quantity<TemperatureChangeRate, TemperatureChangeRateUnit> TemperatureRates = new("a rate of temperature change", (n, u) => TemperatureChangeRate.From(n, u), new()
    {
        ["K/s"] = TemperatureChangeRateUnit.DegreeCelsiusPerSecond,
    });

    internal static readonly Quantity<Duration, DurationUnit> Durations = new("a duration", (n, u) => Duration.From(n, u), new()
    {
        ["s"] = DurationUnit.Second,
        ["min"] = DurationUnit.Minute,
        ["h"] = DurationUnit.Hour,
    });

    internal static readonly Quantity<Mass, MassUnit> Masses = new("a mass", (n, u) => Mass.From(n, u), new()
    {
        ["kg"] = MassUnit.Kilogram,
        ["g"] = MassUnit.Gram,
        ["mg"] = MassUnit.Milligram,
    });

    internal static readonly Quantity<Density, DensityUnit> Densities = new("a density", (n, u) => Density.From(n, u), new()
    {
        ["kg/m3"] = DensityUnit.KilogramPerCubicMeter,
        ["g/cm3"] = DensityUnit.GramPerCubicCentimeter,
    });

    internal static readonly Quantity<ThermalConductivity, ThermalConductivityUnit> Conductivities = new("a thermal conductivity", (n, u) => ThermalConductivity.From(n, u), new()
    {
        ["W/mK"] = ThermalConductivityUnit.WattPerMeterKelvin,
    });

    internal static readonly Quantity<SpecificEntropy, SpecificEntropyUnit> SpecificHeats = new("a specific heat", (n, u) => SpecificEntropy.From(n, u), new()
    {
        ["J/kgK"] = SpecificEntropyUnit.JoulePerKilogramKelvin,
        ["J/gK"] = SpecificEntropyUnit.KilojoulePerKilogramKelvin,
    });

    internal static readonly Quantity<SpecificEnergy, SpecificEnergyUnit> SpecificEnergies = new("a specific energy", (n, u) => SpecificEnergy.From(n, u), new()
    {
        ["J/kg"] = SpecificEnergyUnit.JoulePerKilogram,
        ["kJ/kg"] = SpecificEnergyUnit.KilojoulePerKilogram,
        ["J/g"] = SpecificEnergyUnit.KilojoulePerKilogram,
    });

    internal static readonly Quantity<HeatTransferCoefficient, HeatTransferCoefficientUnit> HeatTransferCoefficients = new("a heat-transfer coefficient", (n, u) => HeatTransferCoefficient.From(n, u), new()
    {
        ["W/m2K"] = HeatTransferCoefficientUnit.WattPerSquareMeterKelvin,
    });

    internal static readonly Quantity<Power, PowerUnit> Powers = new("a power", (n, u) => Power.From(n, u), new()
    {
        ["W"] = PowerUnit.Watt,
        ["mW"] = PowerUnit.Milliwatt,
    });

    internal static readonly Quantity<Entropy, EntropyUnit> HeatCapacities = new("a heat capacity", (n, u) => Entropy.From(n, u), new()
    {
        ["J/K"] = EntropyUnit.JoulePerKelvin,
    });

    internal static readonly Quantity<VolumeFlow, VolumeFlowUnit> VolumeFlows = new("a volume flow", (n, u) => VolumeFlow.From(n, u), new()
    {
        ["L/min"] = VolumeFlowUnit.LiterPerMinute,
    });

    internal static readonly Quantity<MassFlow, MassFlowUnit> MassFlows = new("a mass flow", (n, u) => MassFlow.From(n, u), new()
    {
        ["mg/s"] = MassFlowUnit.MilligramPerSecond,
        ["g/s"] = MassFlowUnit.GramPerSecond,
    });

    internal static readonly Quantity<Pressure, PressureUnit> Pressures = new("a pressure", (n, u) => Pressure.From(n, u), new()
    {
        ["Pa"] = PressureUnit.Pascal,
        ["MPa"] = PressureUnit.Megapascal,
        ["GPa"] = PressureUnit.Gigapascal,
    });

    internal static readonly Quantity<MolarEnergy, MolarEnergyUnit> MolarEnergies = new("a molar energy", (n, u) => MolarEnergy.From(n, u), new()
    {
        ["J/mol"] = MolarEnergyUnit.JoulePerMole,
        ["kJ/mol"] = MolarEnergyUnit.KilojoulePerMole,
    });

    internal static readonly Quantity<Force, ForceUnit> Forces = new("a force", (n, u) => Force.From(n, u), new()
    {
        ["N"] = ForceUnit.Newton,
    });

    internal static readonly Quantity<ForcePerLength, ForcePerLengthUnit> ForcesPerLength = new("a force per width", (n, u) => ForcePerLength.From(n, u), new()
    {
        ["N/mm"] = ForcePerLengthUnit.NewtonPerMillimeter,
    });

    internal static readonly Quantity<Speed, SpeedUnit> Speeds = new("a speed", (n, u) => Speed.From(n, u), new()
    {
        ["m/s"] = SpeedUnit.MeterPerSecond,
    });

    internal static readonly Quantity<CoefficientOfThermalExpansion, CoefficientOfThermalExpansionUnit> Expansions = new("a coefficient of thermal expansion", (n, u) => CoefficientOfThermalExpansion.From(n, u), new()
    {
        ["ppm/K"] = CoefficientOfThermalExpansionUnit.PpmPerKelvin,
    });

    internal static readonly Quantity<HeatFlux, HeatFluxUnit> HeatFluxes = new("a heat flux", (n, u) => HeatFlux.From(n, u), new()
    {
        ["W/m2"] = HeatFluxUnit.WattPerSquareMeter,
        ["kW/m2"] = HeatFluxUnit.KilowattPerSquareMeter,
    });

    internal static readonly Quantity<Ratio, RatioUnit> Ratios = new("a share", (n, u) => Ratio.From(n, u), new()
    {
        ["%"] = RatioUnit.Percent,
    });

    internal static readonly Quantity<ElectricCurrent, ElectricCurrentUnit> Currents = new("an electric current", (n, u) => ElectricCurrent.From(n, u), new()
    {
        ["A"] = ElectricCurrentUnit.Ampere,
        ["mA"] = ElectricCurrentUnit.Milliampere,
    });

    internal static readonly Quantity<ElectricResistance, ElectricResistanceUnit> Resistances = new("an electric resistance", (n, u) => ElectricResistance.From(n, u), new()
    {
        ["ohm"] = ElectricResistanceUnit.Ohm,
        ["kohm"] = ElectricResistanceUnit.Kiloohm,
        ["Mohm"] = ElectricResistanceUnit.Megaohm,
    });

    internal static readonly Quantity<BitRate, BitRateUnit> BitRates = new("a bit rate", (n, u) => BitRate.From(n, u), new()
    {
        ["kbit/s"] = BitRateUnit.KilobitPerSecond,
        ["Mbit/s"] = BitRateUnit.MegabitPerSecond,
        ["Gbit/s"] = BitRateUnit.GigabitPerSecond,
    });
}
