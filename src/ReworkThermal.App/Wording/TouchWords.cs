using System.Globalization;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Wording;

/// <summary>Sentences about logged touches.</summary>
internal static class TouchWords
{
    internal const string PurposeNeeded = "say what the touch was for with --purpose, like --purpose wick.";

    internal const string ToolNeeded = "say which tool gave the heat, like --iron medium --iron-set 350.";

    internal const string SecondsNeeded = "say how long the touch was with --seconds, or give its temperatures with --series.";

    internal const string MassNeeded = "say how much alloy was added with --added-mass, or what the mix was with --mix; without either the mix is not known.";

    internal const string AlloyNeeded = "say which alloy the --added-mass is of with --added, like --added Bi58Sn42.";

    internal const string CostHeading = "What it cost";

    internal static readonly string[] CostColumns = ["pad", ">peak °C", "melted", ">budget before", ">after", ">range after", "band"];

    internal static string Melted(bool melted) => melted ? "yes" : "no";

    internal static string BadTime(string text) => $"--at '{VisibleText.Of(text)}' is no time; write it like 2026-03-01T09:30:00Z.";

    internal static string NotSimulated(string reason) => $"not recorded, because the touch cannot be simulated: {reason}. Correct the settings, or give measured temperatures with --series.";

    internal static string LoggedOnly(string reason) => $"The touch is logged with its settings and seconds only; its temperature is simulated when it is judged ({reason.TrimEnd('.')}).";

    internal static string Simulated(PadId pad, string solder, string flow, string? time) => time is null
        ? $"Pad {pad}: with {solder} (flows at {flow}) the joint did not flow through during this touch."
        : string.Create(CultureInfo.InvariantCulture, $"Pad {pad}: with {solder} (flows at {flow}) all of the joint was at flow temperature after {time}.");
}
