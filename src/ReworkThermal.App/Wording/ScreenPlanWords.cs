using System.Globalization;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Reports;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the plan.</summary>
internal static class ScreenPlanWords
{
    internal const string RequestTitle = "What the plan is for";
    internal const string AnswerTitle = "Plans, best first";
    internal const string RequestKeys = "up/down line   left/right chooses   Enter types   R run";
    internal const string RequestKeysWithAnswer = "up/down line   left/right chooses   Enter types   R run   V view answer";
    internal const string AnswerKeys = "up/down plan   K keep it in the job   PgUp/PgDn reasons   V request   R run again";
    internal const string RunningKeys = "Esc breaks the run off";
    internal const string Starting = "starting";
    internal const string RunningTitle = "Working";
    internal const string RunGoesOn = "The run goes on; Esc breaks it off.";
    internal const string BreakingOff = "Breaking off ...";
    internal const string BrokenOff = "Broken off; there is no answer.";
    internal const string RequestWrong = "The request is not in order yet; see the marked line.";
    internal const string FieldNeeded = "this line must not be empty";
    internal const string NoneAtHand = "none";
    internal const string UsualLimit = "usual limit";
    internal const string Accepted = "The plan is in the job. 4 goes to the bench clock.";
    internal const string NoPlan = "No plan holds every limit.";
    internal const string RuledOut = "Ruled out";
    internal const string Reasons = "Why";
    internal const string KeptNote = "Board, joint, solder and lead-free go into the job at once; bench and limits last until the program ends.";
    internal const string NotAvailable = "This program was built without the planner.";

    internal static string Field(PlanField field) => field switch
    {
        PlanField.Board => "board",
        PlanField.Joint => "joint",
        PlanField.Side => "tool comes from",
        PlanField.BaseSolder => "base solder",
        PlanField.Refill => "refit with",
        PlanField.EarlierHeat => "heat before arrival",
        PlanField.Irons => "irons at hand",
        PlanField.Contact => "tip meets joint",
        PlanField.Preheaters => "preheaters at hand",
        PlanField.Removal => "taken out with",
        PlanField.WireMillimetres => "wire, mm",
        PlanField.AmbientCelsius => "room, °C",
        PlanField.MostDwellSeconds => "longest touch, s",
        PlanField.MostBudgetPercent => "most budget, %",
        PlanField.LeadFreeOnly => "lead-free only",
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    internal static string Progress(double share, string doing) => string.Create(CultureInfo.InvariantCulture, $"{share * 100:0} %  {doing}");

    internal static string Added(PlanLine line) => line.Alloy is null
        ? "nothing added"
        : string.Create(CultureInfo.InvariantCulture, $"{line.AddedMass.Milligrams:0} mg {line.Alloy}");

    internal static string Tools(PlanLine line)
    {
        List<string> tools = [];
        if (line.IronSetting is { } iron)
        {
            tools.Add(string.Create(CultureInfo.InvariantCulture, $"iron {iron.DegreesCelsius:0}"));
        }

        if (line.AirSetting is { } air && line.AirFlow is { } flow)
        {
            tools.Add(string.Create(CultureInfo.InvariantCulture, $"air {air.DegreesCelsius:0} at {flow.LitersPerMinute:0}"));
        }

        if (line.Preheat is { } preheat)
        {
            tools.Add(string.Create(CultureInfo.InvariantCulture, $"board {preheat.DegreesCelsius:0}"));
        }

        return tools.Count > 0 ? string.Join(", ", tools) + " °C" : "no heat";
    }

    internal static string Times(PlanLine line) => string.Create(
        CultureInfo.InvariantCulture,
        $"dwell {line.Dwell.Seconds:0.0} s, stop at {line.Stop.Seconds:0.0} s, {line.Passes} pass{(line.Passes == 1 ? string.Empty : "es")}");

    internal static string Cost(PlanLine line) => string.Create(
        CultureInfo.InvariantCulture,
        $"budget {line.BudgetShare * 100:0.#} % ({line.BudgetShareLow * 100:0.#} to {line.BudgetShareHigh * 100:0.#})");

    internal static string FlowTime(PlanLine line) => line is { TimeToFlowP10: { } p10, TimeToFlowP90: { } p90 }
        ? string.Create(CultureInfo.InvariantCulture, $"flows after {line.TimeToFlow.Seconds:0.0} s ({p10.Seconds:0.0} to {p90.Seconds:0.0}), mix flows at {line.Flow.DegreesCelsius:0} °C")
        : string.Create(CultureInfo.InvariantCulture, $"flows after {line.TimeToFlow.Seconds:0.0} s, mix flows at {line.Flow.DegreesCelsius:0} °C");

    internal static string Binding(PlanLine line) => $"held back by {line.BindingLimit}";

    internal static string Summary(PlanLine line) => $"{line.Kind}: {Added(line)}; {Tools(line)}; {Times(line)}";
}
