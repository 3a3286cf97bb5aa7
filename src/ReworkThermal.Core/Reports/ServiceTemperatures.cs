using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Temperatures at which reports say how much of a joint is still liquid on real cooling; the names of their fields carry them.</summary>
internal static class ServiceTemperatures
{
    /// <summary>100 °C: a warm board in use; bismuth-lead-tin (96 °C) is liquid.</summary>
    internal static readonly Temperature Warm = Temperature.FromDegreesCelsius(100);

    /// <summary>140 °C: a hot board in use; bismuth-tin (139 °C) is liquid as well.</summary>
    internal static readonly Temperature Hot = Temperature.FromDegreesCelsius(140);
}
