using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Words of a triage.</summary>
internal static class TriageWords
{
    internal const string JobOrPads = "say which pads are meant: --job JOB for the pins of a job, or --pads NUMBER with --missing and --loose.";

    internal const string DamageOfJob = "--missing and --loose go with --pads: of a job it is known how each pin looks.";

    internal const string TooManyDamaged = "--missing and --loose together are more than --pads.";

    internal const string BandsHeading = "Pads after the work";

    internal const string PadsHeading = "Pad by pad";

    internal const string Gone = "gone";

    internal static readonly string[] BandColumns = ["band", ">central figures", ">at worst"];

    internal static readonly string[] PadColumns = ["pad", "state", "earlier heat", ">touches", "before", "after", "at worst", "wire", "reason"];

    internal static string NoPins(string text) => $"the job '{text}' has no pins yet; register them first.";

    internal static string Plan(string kind) => $"worked by the plan '{kind}'";

    internal static string Touches(int touches, int pads) => string.Create(CultureInfo.InvariantCulture, $"{touches} touches on {pads} joints");

    internal static string Time(string likely, string least, string most) => $"{likely} at the bench ({least} to {most})";

    internal static string Wires(int certain, int possible) => string.Create(CultureInfo.InvariantCulture, $"wires: {certain} certain, {possible} more possible");
}
