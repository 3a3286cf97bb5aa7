using System.Globalization;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the bench clock.</summary>
internal static class ScreenClockWords
{
    internal const string Ready = "READY";
    internal const string ReadyHint = "Space, Enter or the pedal starts";
    internal const string Running = "TOUCH RUNNING";
    internal const string RunningHint = "Space stops, F it flows now";
    internal const string DwellReached = "DWELL REACHED";
    internal const string StopNow = "STOP NOW";
    internal const string Off = "TOOL OFF";
    internal const string AskFlow = "Did it flow? Y yes, N no, Space next touch";
    internal const string Keys = "Space start/stop   up/down pad   U S I A B settings";
    internal const string RunningKeys = "Space stops the touch   F marks the flow";
    internal const string OpenKeys = "K say how long it was   D it gave no heat";
    internal const string Interrupted = "A touch was cut short";
    internal const string HowLong = "how many seconds was the tool on?";
    internal const string WhyDropped = "why did it give no heat?";
    internal const string CompletedLater = "completed after an interruption; length as the technician states it";
    internal const string FlowMarked = "Flow marked. Space stops the touch.";
    internal const string Occupied = "A touch is running: Space stops it.";
    internal const string HeldKey = "Too soon after the last stroke: taken for a key held down.";
    internal const string NoPad = "No pad to touch: 1, then A to add pins.";
    internal const string NoTool = "Set a tool first: I iron, A hot air, B board heat.";
    internal const string SettleFirst = "Settle the interrupted touch first: K or D.";
    internal const string Released = "Tool off; into the record.";
    internal const string NoFlowKept = "In the record: it did not flow.";
    internal const string NoPlan = "no plan: no dwell, no stop, no bell";
    internal const string PurposeName = "for";
    internal const string AddsName = "adds";
    internal const string IronName = "iron";
    internal const string AirName = "air";
    internal const string BoardName = "board";
    internal const string NotUsed = "not used";
    internal const string Seconds = "s";
    internal const string TraceAcross = "s";
    internal const string TraceUp = "°C";
    internal const string FlowLevel = "flow";
    internal const string DwellMark = "dwell";
    internal const string PadLimit = "pad limit";
    internal const string StopMark = "stop";
    internal const string PadTrace = "p pad   j coldest solder";
    internal const string NoTrace = "no simulated trace yet";
    internal const string PullNow = "all solder flows";
    internal const string DoNotPull = "do not pull";

    internal static string Purpose(TouchPurpose purpose) => purpose switch
    {
        TouchPurpose.Mix => "mix in",
        TouchPurpose.Wick => "wick out",
        TouchPurpose.Lift => "lift part",
        TouchPurpose.Refill => "refit",
        TouchPurpose.Wire => "wire end",
        TouchPurpose.Preheat => "warm board",
        TouchPurpose.Other => "other",
        _ => throw new ArgumentOutOfRangeException(nameof(purpose)),
    };

    internal static string ToolQuestion(ToolField field) => field switch
    {
        ToolField.Iron => "iron",
        ToolField.Air => "hot air",
        ToolField.Preheat => "board held at",
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    internal static string ToolHint(ToolField field) => field switch
    {
        ToolField.Iron => "°C name, as 350 medium; empty: not used",
        ToolField.Air => "°C L/min nozzle, as 330 20 round-6; empty: not used",
        ToolField.Preheat => "°C heater, as 100 hot-plate; empty: not used",
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    internal static string AirNeedsTwo(string text) => $"'{text}': write two numbers, °C and L/min, such as 330 20";

    internal static string Degrees(double celsius) => string.Create(CultureInfo.InvariantCulture, $"{celsius:0} °C");

    internal static string Air(double celsius, double flow) => string.Create(CultureInfo.InvariantCulture, $"{celsius:0} °C at {flow:0.#} L/min");

    internal const string AirFirst = "air first, then the iron: see 3";

    internal static string PlanTimes(AcceptedPlan plan) => string.Create(
        CultureInfo.InvariantCulture,
        $"dwell {plan.Dwell.Seconds:0.0} s   stop {plan.Stop.Seconds:0.0} s");

    internal static string Budget(double? before, double? now, double? atStop) =>
        $"budget {Share(before)}, off now {Share(now, "0.0")}, at stop {Share(atStop)}";

    internal static string Assumed(IReadOnlyList<string> clauses) => $"Assumed: {string.Join("; ", clauses)}.";

    internal static string NoSimulation(string reason) => $"clock only: {reason}";

    internal static string Temperatures(double pad, double solder, double liquid) => string.Create(
        CultureInfo.InvariantCulture,
        $"pad {pad:0} °C  solder {solder:0} °C  {liquid * 100:0} % liquid");

    internal static string OffFor(TimeSpan length, TimeSpan since) => string.Create(
        CultureInfo.InvariantCulture,
        $"On for {length.TotalSeconds:0.0} s, off for {since.TotalSeconds:0} s");

    internal const string FlowKept = "In the record: it flowed. F at the moment of flow teaches more.";

    internal static string Wait(CoolDown coolDown, TimeSpan off) => coolDown switch
    {
        CoolDown.Wait wait when wait.Time.Seconds > off.TotalSeconds => string.Create(
            CultureInfo.InvariantCulture,
            $"Cool to {wait.Target.DegreesCelsius:0} °C in about {Math.Ceiling(wait.Time.Seconds - off.TotalSeconds):0} s."),
        CoolDown.NotWithin never when never.Asked.Seconds > off.TotalSeconds => string.Create(
            CultureInfo.InvariantCulture,
            $"It does not cool to {never.Target.DegreesCelsius:0} °C within {never.Asked.Seconds:0} s."),
        _ => string.Create(CultureInfo.InvariantCulture, $"Cool enough: below {coolDown.Target.DegreesCelsius:0} °C by estimate."),
    };

    internal static string Added(AddedSolder? added) => added switch
    {
        { Mass: { } mass } => string.Create(CultureInfo.InvariantCulture, $"{mass.Milligrams:0.#} mg {added.Designation}"),
        { } filled => $"{filled.Designation}, fills up",
        null => "nothing",
    };

    internal static string TraceTitle(double? warmStart) => warmStart is double celsius
        ? string.Create(CultureInfo.InvariantCulture, $"p pad  j coldest solder  begins at {celsius:0} °C")
        : PadTrace;

    internal static string NotLogged(TimeSpan length, string reason) => string.Create(
        CultureInfo.InvariantCulture,
        $"The touch of {length.TotalSeconds:0.0} s could not be kept: {reason} It stays open; K completes it.");

    internal static string FlowedAt(TimeSpan at) => string.Create(CultureInfo.InvariantCulture, $"flow marked at {at.TotalSeconds:0.0} s");

    internal static string OpenTouch(Logged<TouchStart> touch) => string.Create(
        CultureInfo.InvariantCulture,
        $"pad {string.Join(", ", touch.What.Pads)}, {Purpose(touch.What.Purpose)}, {string.Join(", ", touch.What.Tools.Select(Tool))}, begun {touch.At:yyyy-MM-dd HH:mm:ss} UTC");

    internal static string Tool(ToolSetting tool) => tool switch
    {
        ToolSetting.Iron iron => $"iron {Degrees(iron.Set.DegreesCelsius)}",
        ToolSetting.HotAir air => $"air {Air(air.Set.DegreesCelsius, air.Flow.LitersPerMinute)}",
        ToolSetting.Preheater preheater => $"board held at {Degrees(preheater.Set.DegreesCelsius)}",
        ToolSetting.Bath bath => $"bath {Degrees(bath.Set.DegreesCelsius)}",
        _ => "tool",
    };

    private static string Share(double? share, string format = "0") => share is double known ? (known * 100).ToString(known < 1 ? format : "0", CultureInfo.InvariantCulture) + " %" : "?";
}
