namespace ReworkThermal.App.Wording;

/// <summary>Words of the heat-flow report.</summary>
internal static class HeatWords
{
    internal const string TimeAxis = "time, s";

    internal const string TemperatureAxis = "temperature, °C";

    internal static string Flowed(string time) => $"The solder flows through the whole barrel after {time}.";

    internal static string NeverFlowed(string time) => $"The solder does not flow through the whole barrel within {time}.";

    internal static string Balance(string share) => $"Energy balance: {share} of the heat put in is unaccounted for.";

    /// <summary>A probe's name for a reader.</summary>
    internal static string Probe(string name) => name.Replace('_', ' ');
}
