using System.Globalization;
using ReworkThermal.Core.HeatFlow.Boundaries;
using UnitsNet;

namespace ReworkThermal.Core.Tools;

/// <summary>An iron, what it is set to, and how its tip meets the joint.</summary>
/// <param name="Iron">The iron.</param>
/// <param name="Set">Set temperature, within the iron's range.</param>
/// <param name="Contact">Contact of tip and joint.</param>
public sealed record IronSetting(Iron Iron, Temperature Set, TipContact Contact)
{
    /// <summary>The setting as a source of heat.</summary>
    /// <returns>The source, or why the iron cannot be set so.</returns>
    public SettingOutcome<TipSource> ToSource()
    {
        double set = Set.DegreesCelsius;
        double least = Iron.LeastSetting.DegreesCelsius;
        double most = Iron.MostSetting.DegreesCelsius;
        if (!double.IsFinite(set) || set < least || set > most)
        {
            return new SettingOutcome<TipSource>.Refused(string.Create(
                CultureInfo.InvariantCulture,
                $"the {Iron.Name} cannot be set to {set:0.#} °C; its range is {least:0.#} to {most:0.#} °C"));
        }

        return new SettingOutcome<TipSource>.Ready(
            new TipSource
            {
                Name = Iron.Name,
                Set = Set - Iron.DisplayOffset,
                PowerLimit = Iron.PowerLimit.Central,
                HeatCapacity = Iron.TipHeatCapacity.Central,
                SensorToFaceKelvinPerWatt = Iron.SensorToFaceKelvinPerWatt.Central,
                Contact = Contact.Central(),
                FaceRadius = Iron.FaceDiameter / 2,
            },
            [.. Notes()]);
    }

    private IEnumerable<string> Notes()
    {
        yield return string.Create(CultureInfo.InvariantCulture, $"The contact of tip and joint is {Contact.Words()}.");
        if (Iron.DisplayOffset.Kelvins != 0)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"The display of the {Iron.Name} reads {Math.Abs(Iron.DisplayOffset.Kelvins):0.#} K {(Iron.DisplayOffset.Kelvins > 0 ? "high" : "low")}: set to {Set.DegreesCelsius:0} °C its sensor is at {(Set - Iron.DisplayOffset).DegreesCelsius:0} °C.");
        }
    }
}
