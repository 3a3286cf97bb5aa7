using System.Globalization;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Core.Reports.Records;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the plan.</summary>
internal static class ScreenPlanWords
{
    internal const string AnswerTitle = "Plans, best first";
    internal const string RequestKeys = "up/down line   left/right chooses   Enter types   R run";
    internal const string RequestKeysWithAnswer = "up/down line   left/right chooses   Enter types   R run   V view answer";
    internal const string NoPlanKeys = "PgUp/PgDn reasons   V request   R again";
    internal const string AnswerKeys = "up/down plan   K keep in job   PgUp/PgDn reasons   V request   R again";
    internal const string RunningKeys = "Esc breaks the run off";
    internal const string Starting = "starting";
    internal const string Sampling = "sampling benches";
    internal const string SamplingKeys = "up/down plan   K keep in job   PgUp/PgDn reasons   Esc breaks sampling off";
    internal const string SamplingBrokenOff = "Sampling broken off; the plans stand without their spread.";
    internal const string RunningTitle = "Working";
    internal const string RunGoesOn = "The run goes on; Esc breaks it off.";
    internal const string BreakingOff = "Breaking off ...";
    internal const string BrokenOff = "Broken off; there is no answer.";
    internal const string RequestWrong = "The request is not in order yet; see the marked line.";
    internal const string FieldNeeded = "this line must not be empty";
    internal const string NoneAtHand = "none";
    internal const string Accepted = "The plan is in the job. 4 goes to the bench clock.";
    internal const string NoPlan = "No plan holds every limit.";
    internal const string RuledOut = "Ruled out";
    internal const string Reasons = "Why";
    internal const string KeptNote = "Board, joint, solder and lead-free go into the job at once; bench and limits last until the program ends.";

    internal const string ThroughOnly = "plans are made for through-hole joints only";
    internal const string UsualLimits = "limits that the request leaves open are those of profiles/limits/planning.toml";

    internal static string RequestTitle(int line, int lines) => string.Create(CultureInfo.InvariantCulture, $"What the plan is for (line {line} of {lines})");

    internal static string Assumed(string note) => $"Taken as given: {note}";

    /// <summary>The word of the screens for an assumption about earlier heat, by its name in the data file: "sound" is what pads are said to be.</summary>
    internal static string EarlierHeat(string name) => name switch
    {
        "sound" => "assembly",
        "touched" => "reworked",
        _ => name,
    };

    /// <summary>The name in the data file by the word of the screens.</summary>
    internal static string EarlierHeatName(string word) => word switch
    {
        "assembly" => "sound",
        "reworked" => "touched",
        _ => word,
    };

    internal static string AllAlloys(int count) => string.Create(CultureInfo.InvariantCulture, $"all {count} dilution alloys of the alloys folder are at hand");

    internal static string PadOfOtherJoint(string pad, string joint) => $"pad {pad} belongs to {joint}: plan for that joint, or for none of the pads";

    internal static string PadOnOtherBoard(string pad, string board) => $"pad {pad} is on {board}: plan for that board, or for none of the pads";

    internal static string Field(PlanField field) => field switch
    {
        PlanField.Board => "board",
        PlanField.Joint => "joint",
        PlanField.Side => "tool comes from",
        PlanField.BaseSolder => "base solder",
        PlanField.Refill => "refit with",
        PlanField.EarlierHeat => "heat before arrival",
        PlanField.Pad => "for pad",
        PlanField.Irons => "irons at hand",
        PlanField.Contact => "tip meets joint",
        PlanField.Nozzles => "hot air at hand",
        PlanField.AirLitres => "its flow, L/min",
        PlanField.AirMillimetres => "nozzle above, mm",
        PlanField.Preheaters => "preheaters at hand",
        PlanField.Removal => "taken out with",
        PlanField.WireMillimetres => "wire, mm",
        PlanField.Room => "air at the bench",
        PlanField.AmbientCelsius => "room, °C",
        PlanField.MostDwellSeconds => "longest touch, s",
        PlanField.MostBudgetPercent => "most budget, %",
        PlanField.LeadFreeOnly => "lead-free only",
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    /// <summary>What an empty line stands for.</summary>
    internal static string Usual(PlanField field) => field switch
    {
        PlanField.Side => "the side of the solder, as usual",
        PlanField.Contact => $"{UsualTools.Contact.Word()}, as usual",
        PlanField.AirMillimetres => string.Create(CultureInfo.InvariantCulture, $"{UsualTools.NozzleDiameters:0} nozzle diameters, as usual"),
        _ => "usual limit",
    };

    internal static string Progress(double share, string doing) => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0} %  {doing}");

    internal static string Added(PlanLine line) => line.Alloy is null
        ? "nothing added"
        : string.Create(CultureInfo.InvariantCulture, $"{line.AddedMass.Milligrams:0} mg {line.Alloy}");

    internal static string CalibrationBroken(string problem) => $"The calibration of this board cannot be read: {problem}";

    internal static string DetailsTitle(bool hasPlans, int learnedFrom, double? sampling)
    {
        string learned = learnedFrom > 0 ? string.Create(CultureInfo.InvariantCulture, $", learned from {learnedFrom} timed touch{(learnedFrom == 1 ? string.Empty : "es")}") : string.Empty;
        string still = sampling is double share ? string.Create(CultureInfo.InvariantCulture, $", sampling benches {share * 100:0} %") : string.Empty;
        return (hasPlans ? Reasons : RuledOut) + learned + still;
    }

    /// <summary>How often the plan is done in time, or nothing while that is not known.</summary>
    internal static string InTime(TimeSpread? spread) => spread is null
        ? string.Empty
        : string.Create(CultureInfo.InvariantCulture, $"; in time {100.0 * spread.FinishedInTime / spread.Samples:0} %");

    internal static string Tools(TouchLine touch)
    {
        List<string> tools = [];
        if (touch.IronSetting is { } iron)
        {
            tools.Add(string.Create(CultureInfo.InvariantCulture, $"{touch.Iron} {iron.DegreesCelsius:0} °C"));
        }

        if (touch.Air is { } air)
        {
            string ahead = touch.Iron is null ? string.Empty : string.Create(CultureInfo.InvariantCulture, $" from {air.Lead.Seconds:0.#} s before");
            tools.Add(string.Create(CultureInfo.InvariantCulture, $"{air.Nozzle} {air.Setting.DegreesCelsius:0} °C at {air.Flow.LitersPerMinute:0.#} L/min{ahead}"));
        }

        if (touch.Preheater is { } preheater)
        {
            tools.Add(string.Create(CultureInfo.InvariantCulture, $"{preheater}, board {touch.Board.DegreesCelsius:0} °C"));
        }

        return tools.Count > 0 ? string.Join(", ", tools) : "no heat";
    }

    /// <summary>As <see cref="Tools"/>, short: without the name of the preheater, and of air that helps an iron without its nozzle and flow.</summary>
    internal static string Settings(TouchLine touch)
    {
        string tools = touch is { IronSetting: { } iron, Air: { } help }
            ? string.Create(CultureInfo.InvariantCulture, $"{touch.Iron} {iron.DegreesCelsius:0} °C after {help.Lead.Seconds:0.#} s of air at {help.Setting.DegreesCelsius:0} °C")
            : Tools(touch with { Preheater = null });
        return touch.Preheater is null ? tools : string.Create(CultureInfo.InvariantCulture, $"{tools}, board {touch.Board.DegreesCelsius:0} °C");
    }

    internal static string Times(PlanLine line) => string.Create(
        CultureInfo.InvariantCulture,
        $"dwell {line.First.Dwell.Seconds:0.0} s, stop at {line.First.Stop.Seconds:0.0} s, {line.Passes} pass{(line.Passes == 1 ? string.Empty : "es")}");

    internal static string Cost(PlanLine line) => string.Create(
        CultureInfo.InvariantCulture,
        $"budget {line.BudgetShare.Central * 100:0} % ({line.BudgetShare.Low * 100:0} to {line.BudgetShare.High * 100:0})");

    internal static IEnumerable<string> Reading(PlanLine line)
    {
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"The mix flows at {line.Flow.DegreesCelsius:0} °C ± {line.Uncertainty.Kelvins:0.#} K, after {line.First.TimeToFlow.Seconds:0.0} s on the central bench.");
        foreach (string sentence in line.TimeToFlowSpread is { } spread ? Spread(spread) : [])
        {
            yield return sentence;
        }

        yield return $"First pass: {Tools(line.First)}.";
        yield return $"Stop: {line.First.StopReason}.";
        yield return string.Create(CultureInfo.InvariantCulture, $"Pad at most {line.First.PadPeak.DegreesCelsius:0} °C at the dwell.");
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"Refit: {Tools(line.Refit)}, dwell {line.Refit.Dwell.Seconds:0.0} s, stop at {line.Refit.Stop.Seconds:0.0} s.");
        yield return $"Budget: {line.BudgetReason}";
        yield return $"Held back by: {line.BindingLimit}.";
    }

    internal static string Summary(PlanLine line) => $"{line.Kind}: {Added(line)}; {Tools(line.First)}; {Times(line)}";

    private static IEnumerable<string> Spread(TimeSpread spread)
    {
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"On {spread.Samples} sampled benches: flows after P10 {Time(spread.P10)}, P50 {Time(spread.P50)}, P90 {Time(spread.P90)}; done before the stop on {spread.FinishedInTime}.");
        if (spread.PadTooHot > 0)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Pad over its limit on {spread.PadTooHot} of them.");
        }

        foreach (InfluenceLine input in spread.Influences.Take(3))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"Matters: {input.Input}, {input.Share * 100:0} % of the spread; {input.HowToLearn}.");
        }

        string Time(UnitsNet.Duration? time) => time is { } known
            ? string.Create(CultureInfo.InvariantCulture, $"{known.Seconds:0.0} s")
            : string.Create(CultureInfo.InvariantCulture, $"over {spread.Followed.Seconds:0} s");
    }
}
