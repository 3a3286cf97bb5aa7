namespace ReworkThermal.App.Wording;

/// <summary>Words of the heat-flow report.</summary>
internal static class HeatWords
{
    internal const string TimeAxis = "time, s";

    internal const string TemperatureAxis = "temperature, °C";

    internal const string TimeColumn = ">time s";

    internal const string HeatHeading = "Heat into the model";

    internal const string NeighboursHeading = "Parts near the joint";

    internal const string WithinLimits = "within its limits";

    internal static string Flowed(string time, string flow) =>
        $"The solder flows through the whole joint after {time}: its coldest part is then at {flow}, 97 % liquid.";

    internal static string NeverFlowed(string flow, string peak) =>
        $"The solder does not flow through the whole joint: that takes {flow}, and its coldest part only reaches {peak}.";

    internal static string Superheated(string superheat, string? time) => time is null
        ? $"It never has the {superheat} of superheat that are asked for to work it."
        : $"With the {superheat} of superheat that are asked for to work it: {time}.";

    internal static string MoreProbes(IReadOnlyList<string> names) =>
        $"Temperatures in °C. Further places, in --json and --csv: {string.Join(", ", names)}.";

    internal static string FlowLevel(string flow) => $"flow {flow}";

    internal static string NeededLevel(string temperature) => $"with superheat {temperature}";

    internal static string LimitLevel(string part, string temperature) => $"limit {part} {temperature}";

    internal static string Front(string barrel, string solder) =>
        $"At its best {barrel} of the barrel's length had flowed from the touched face on, and {solder} of all solder.";

    internal static string Balance(string share) => $"Energy balance: {share} of the heat that moved is unaccounted for.";

    internal static string Mesh(int radial, int axial, int steps, string? error) =>
        $"Mesh: {radial} x {axial} cells, {steps} time steps; {(error is null ? "its error was not estimated" : $"the mesh leaves an error {error} (difference to a mesh half as fine)")}.";

    internal static string FlowedWithoutBarrel(string solder) => $"At its best {solder} of all solder had flowed.";

    internal static string Under(string value) => $"under {value}";

    internal static string About(string value) => $"of about {value}";

    /// <summary>A probe's name for a reader.</summary>
    internal static string Probe(string name) => name.Replace('_', ' ');
}
