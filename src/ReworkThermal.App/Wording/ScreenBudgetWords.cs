using ReworkThermal.Core.Damage;

namespace ReworkThermal.App.Wording;

/// <summary>Words about heat budgets on the screens.</summary>
internal static class ScreenBudgetWords
{
    internal const string NoSite = "board or joint missing";
    internal const string NoBoard = "board not known";
    internal const string NoJoint = "joint not known";
    internal const string NoTool = "neither iron nor hot air is set";
    internal const string NoMelting = "the melting of the solder could not be computed";

    internal static string UnknownIron(string? name) => $"iron '{name}' is not in profiles/irons";

    internal static string UnknownNozzle(string? name) => $"nozzle '{name}' is not in profiles/air";

    internal static string UnknownHeater(string? name) => $"board heater '{name}' is not in profiles/preheat";

    internal static string Gauge(GaugeKind kind) => kind switch
    {
        GaugeKind.Laminate => "laminate",
        GaugeKind.Adhesion => "adhesion",
        GaugeKind.Copper => "copper",
        GaugeKind.Barrel => "barrel",
        GaugeKind.Melts => "melts",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
