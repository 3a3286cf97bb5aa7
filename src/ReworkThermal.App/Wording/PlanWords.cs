using System.Globalization;
using ReworkThermal.Core.Planning.Pads;

namespace ReworkThermal.App.Wording;

/// <summary>Words of a plan.</summary>
internal static class PlanWords
{
    internal const string RuledOutHeading = "Ruled out";

    internal const string BudgetHeading = "What the heat budget rests on";

    internal const string Add = "add";

    internal const string Nothing = "nothing";

    internal const string MixFlow = "mix flows at";

    internal const string FirstPass = "first pass";

    internal const string Refit = "later, and refit";

    internal const string FinalJoint = "final joint";

    internal const string NotUsed = "-";

    internal const string NoPreheat = "no preheater";

    internal const string TimeToFlow = "time to flow";

    internal const string Passes = "passes";

    internal const string BudgetShare = "heat budget used";

    internal const string HeatBudget = "heat budget";

    internal const string LaminateShare = "laminate used";

    internal const string BindingLimit = "held back by";

    internal const string Kind = "kind";

    internal const string Tool = "tool";

    internal const string Board = "board";

    internal const string Dwell = "hold for";

    internal const string Stop = "stop at";

    internal const string PadAt = "pad at the end of the dwell";

    internal const string RefitPad = "pad at the refit";

    internal const string FinalSolidus = "solidus of the final joint";

    internal const string FinalEnd = "its last liquid";

    internal const string NotSampled = "not sampled";

    internal const string Same = "same";

    internal static readonly string[] OverviewColumns =
        ["", "kind", ">tool", ">board", ">dwell", ">pass", ">used", "add"];

    internal static readonly string[] BenchCautions =
    [
        "Tips, molten solder and a preheated board burn at a touch; wear eye protection and extract the fume at the tip.",
        "Unplug the equipment, take batteries out and discharge capacitors before work; mains-powered equipment belongs in licensed hands where the law says so.",
        "Do not pull: the part comes out when every one of its joints is liquid.",
    ];

    internal static string NowAndAfter(string now, string after, string used) => $"{now} now, {after} after: the job uses {used}";

    internal static string WithAir(string iron, string air) => $"{iron} + air {air}";

    internal static string AfterAir(string iron, string lead, string air) => $"{iron} after {lead} of {air}";

    internal static string ByAir(string setting) => $"air {setting}";

    /// <summary>A caution with the plans it belongs to; all of them need no numbers.</summary>
    internal static string CautionOf(string caution, IReadOnlyList<int> plans, int of) => plans.Count == of
        ? caution
        : string.Create(CultureInfo.InvariantCulture, $"{(plans.Count == 1 ? "Plan" : "Plans")} {Listed(plans)}: {caution}");

    internal static string Strain(NeighbourStrain strain, string least, string most, string doubtful, string limit, bool isOver)
    {
        string figures = least == most ? $"{most} {strain.Unit}" : $"{least} to {most} {strain.Unit}";
        string does = strain.Kind switch
        {
            NeighbourStrainKind.Temperature => "reaches",
            NeighbourStrainKind.Difference => "has a difference over its length of",
            NeighbourStrainKind.Rate => "is heated at",
            _ => throw new ArgumentOutOfRangeException(nameof(strain)),
        };
        return isOver
            ? $"{strain.Part} near the joint {does} {figures}, above its limit of {limit} {strain.Unit}: shield it."
            : $"{strain.Part} near the joint {does} {figures}; its limit of {limit} {strain.Unit} is in doubt from {doubtful} {strain.Unit} on.";
    }

    internal static string NameOf(NeighbourStrainKind kind) => kind switch
    {
        NeighbourStrainKind.Temperature => "temperature",
        NeighbourStrainKind.Difference => "difference over its length",
        NeighbourStrainKind.Rate => "heating rate",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    internal static string NoPlan(string reason) => $"No plan holds every limit: {reason}";

    internal static string Found(int count) => count == 1
        ? "One plan holds every limit."
        : string.Create(CultureInfo.InvariantCulture, $"{count} plans hold every limit.");

    internal static string PlanHeading(int number, string kind) => string.Create(CultureInfo.InvariantCulture, $"Plan {number}: {kind}");

    internal static string Amount(string mass, string alloy, string share) => $"{mass} of {alloy} ({share} of the mix)";

    internal static string AsWire(string amount, string length) => $"{amount}, {length} of wire";

    internal static string WithUncertainty(string temperature, string range) => $"{temperature} ± {range}";

    internal static string IronAt(string tip, string setting) => $"{tip} tip at {setting}";

    internal static string PreheatAt(string preheater, string board) => $"{preheater}, board settled at {board}";

    internal static string Tools(string iron, string heat) => $"{iron}; {heat}";

    internal static string Times(string flow, string dwell, string stop, string reason) =>
        $"flows after {flow}, hold {dwell}, stop by {stop} flowed or not ({reason})";

    internal static string PadPeak(string peak) => $"up to {peak} between pad and laminate";

    internal static string FinalIs(string composition, string solidus, string end, string liquid, bool clean) =>
        $"{composition}: solidus {solidus}, last liquid at {end}" + (clean ? string.Empty : $", {liquid} liquid at 100 °C: NOT clean enough");

    internal static string IronAfterAir(string iron, string lead, string air) => $"{lead} of air ({air}), then with the air left on {iron}";

    internal static string AirAt(string nozzle, string setting, string flow, string distance) => $"{nozzle} at {setting}, {flow}, {distance} away";

    internal static string Sampled(string middle, string? early, string late) => early is null ? $"{middle}; {late}" : $"{middle}; {early}, {late}";

    internal static string OnMiddleBench(string time) => $"{time} on the middle bench";

    internal static string MiddleBenchNever(string followed) => $"the middle bench is not done within {followed}";

    internal static string OneInTenUnder(string time) => $"one bench in ten takes under {time}";

    internal static string OneInTenOver(string time) => $"one in ten over {time}";

    internal static string OneInTenNever(string followed) => $"one in ten is not done within {followed}";

    internal static string Finished(int finished, int samples) =>
        string.Create(CultureInfo.InvariantCulture, $"done before the stop on {finished} of {samples} sampled benches");

    internal static string PadTooHot(int hot, int samples) =>
        string.Create(CultureInfo.InvariantCulture, $"pad over its limit on {hot} of {samples}");

    internal static string Influence(string advice, string input, string share) => $"{advice}: {input} explains {share} of the spread";

    internal const string JobAndPad = "--job and --pad go together: the plan is for one pad of one job.";

    internal static string OtherJoint(string job, string joint, string requested) =>
        $"'{job}' is about the joint {joint}, the request about {requested}: ask for a plan of the joint that the pad belongs to.";

    internal static string OtherBoard(string job, string board, string requested) => $"'{job}' is about the board {board}, the request about {requested}.";

    internal const string Sampling = "sampling";

    internal static string WhyHeading(string step) => $"Why: {step}";

    internal static string RestsOn(string what) => $"rests on {what}";

    internal static string[] CompareColumns(int first, int second) =>
        ["", string.Create(CultureInfo.InvariantCulture, $"plan {first}"), string.Create(CultureInfo.InvariantCulture, $"plan {second}"), ""];

    internal static string CompareReason(int number, string budget, string limit) =>
        string.Create(CultureInfo.InvariantCulture, $"plan {number}: {budget}; held back by {limit}");

    internal static string OnlyWith(int number) => string.Create(CultureInfo.InvariantCulture, $"Cautions of plan {number} only");

    internal static string FromTo(string low, string high) => $"{low} to {high}";

    internal static string Range(string central, string low, string high) => $"{central} ({low} to {high})";

    private static string Listed(IReadOnlyList<int> numbers)
    {
        string[] names = [.. numbers.Select(n => n.ToString(CultureInfo.InvariantCulture))];
        return names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}";
    }
}
