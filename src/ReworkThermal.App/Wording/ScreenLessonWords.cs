using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Words about what timed touches teach.</summary>
internal static class ScreenLessonWords
{
    internal const string OtherPurpose = "only mix, wick and lift touches teach";
    internal const string NotSimulated = "the touch could not be simulated";
    internal const string NotFull = "only the first touch of a full joint teaches";
    internal const string WarmBoard = "the board was still warm from the touch before";
    internal const string UnknownMass = "the added mass is unknown";
    internal const string IronOnly = "only touches with a known iron alone teach";
    internal const string UnknownHeater = "the preheater is not known";
    internal const string NoSite = "board or joint is not known";
    internal const string KnownAlready = "it has taught already";
    internal const string NoFit = "the touches do not fit together";

    internal static string Learned(int touches) => touches == 1
        ? "Learned from 1 timed touch on this board; the next plan uses it."
        : string.Create(CultureInfo.InvariantCulture, $"Learned from {touches} timed touches on this board; the next plan uses them.");

    internal static string NotLearned(string reason) => $"In the record. Nothing learned: {reason}.";

    internal static string NotTakenBack(string reason) => $"Void, but what it taught stays: {reason}.";

    internal static string TakenBack(int touches) => string.Create(CultureInfo.InvariantCulture, $"Void, and forgotten by the next plan; {touches} timed touches are left.");
}
