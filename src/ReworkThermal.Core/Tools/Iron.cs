using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Tools;

/// <summary>
/// A soldering iron as a source of heat: a tip of some heat capacity, a sensor held at the set temperature by a heater of limited
/// power, and a resistance between sensor and working face. Start reading this room here.
/// </summary>
public sealed record Iron
{
    /// <summary>Name for reports: a generic class of tip.</summary>
    public required string Name { get; init; }

    /// <summary>Greatest power of the heater.</summary>
    public required Estimate<Power> PowerLimit { get; init; }

    /// <summary>Heat capacity of the tip [J/K].</summary>
    public required Estimate<Entropy> TipHeatCapacity { get; init; }

    /// <summary>Thermal resistance between sensor and working face [K/W], above zero.</summary>
    public required Estimate<double> SensorToFaceKelvinPerWatt { get; init; }

    /// <summary>Diameter of the wetted working face.</summary>
    public required Length FaceDiameter { get; init; }

    /// <summary>How much hotter its display reads than the sensor is: positive reads high. Errors of -20 to +40 K were seen on an open iron project.</summary>
    public TemperatureDelta DisplayOffset { get; init; }

    /// <summary>Lowest temperature it can be set to.</summary>
    public required Temperature LeastSetting { get; init; }

    /// <summary>Highest temperature it can be set to.</summary>
    public required Temperature MostSetting { get; init; }
}
