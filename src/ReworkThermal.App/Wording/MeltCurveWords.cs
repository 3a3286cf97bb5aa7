namespace ReworkThermal.App.Wording;

/// <summary>Words of the melt curve.</summary>
internal static class MeltCurveWords
{
    internal const string TemperatureAxis = "temperature, °C";

    internal const string LiquidAxis = "liquid, % by mass";

    internal const string LiquidLine = "liquid";

    internal static readonly string[] Columns = [">°C", ">liquid %", ">kJ/kg", "phases"];

    internal static string Title(string composition, string range) => $"Melt curve of {composition} (percent by mass), temperatures ± {range}";

    internal static string ChartTitle(string composition) => $"Melt curve of {composition}";
}
