using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Wiring;

namespace ReworkThermal.App.Wording;

/// <summary>Sentences about jumper wires.</summary>
internal static class WireWords
{
    internal const string OneLegNeeded = "at least one leg must have a wire: give --first or --second a length above 0.";

    internal const string TwoEnds = "a wire has two ends: name two pads.";

    internal const string NoWires = "No wire is recorded.";

    internal const string Bare = "bare";

    internal const string ListTitle = "Jumper wires";

    internal const string Fit = "Fit, even by the strict end of every limit.";

    internal static readonly string[] Cautions =
    [
        "Two touches a wire: each end heats the small pad it is soldered to. Log each with 'touch log --purpose wire'; a small pad heats in a second or two.",
        "A ceramic part beside the pad can crack from uneven heat: warm the board, and keep the tip off the part.",
        "Insulate the wire wherever it crosses bare copper, joints or vias, and fix it down so that nothing pulls on its pads.",
        "Fusing currents are bounds, no ratings; no published limit for the number or the length of jumper wires was found.",
    ];

    internal const string Resistance = "resistance at 20 °C";

    internal const string VoltageDrop = "voltage drop, warm";

    internal const string Heat = "heat";

    internal const string Rise = "temperature rise";

    internal const string PreeceFusing = "melts at (Preece, steady)";

    internal const string OnderdonkFusing = "melts in 1 s at (Onderdonk)";

    internal const string Inductance = "inductance";

    internal const string LegsDiffer = "lengths differ by";

    internal const string Skew = "skew";

    internal const string BitTime = "bit time";

    internal const string SkewShare = "skew as a share of it";

    internal const string PairImpedance = "impedance of the two wires";

    internal const string ItMelts = "it melts";

    internal const string StripAway = "The insulation comes off in hot solder: strip it on a bead of solder away from the pad.";

    internal const string PairCaution = "A wire pair does not keep the impedance of the tracks: try and test it at full speed before it is handed over.";

    internal const string NoSetting = "No iron at hand makes the solder on this pad flow within the limits: it flows too late, or the pad gets too hot.";

    internal const string TwoTouches = "This is one end; the other end of the wire costs its own pad a touch of its own.";

    internal static readonly string[] PlanColumns = ["tools", ">flows", ">hold", ">pad °C", ">laminate", ">used after", "band"];

    internal static readonly string[] ListColumns = ["from", "to", "wire", ">touches logged", "note"];

    internal static string Fusing(string amperes) => $"{amperes} A: a bound, no rating";

    internal static string OfSupply(string share) => $", {share} of the supply";

    internal static string Settles(string low, string high) => $"{low} between cool ends to {high} far from them";

    internal static string Doubtful(string low) => $"{low} between cool ends; a long wire would melt";

    internal static string TooClose(string diameter) => $"--spacing must be above the diameter of the conductor, {diameter} mm.";

    internal static string PlanTitle(PadId pad) => $"Soldering a wire to pad {pad}";

    internal static string AssumedSolder(string solder) => $"The wire is taken to be set with {solder}; --with names another.";

    internal static string PadLimit(string limit) => $"The interface of pad and laminate must stay below {limit} (profiles/limits/planning.toml).";

    internal static string Title(WireGauge gauge, string length, string kind) => $"{gauge} wire, {length}, {kind}";

    internal static string PairTitle(string rate, string kind) => $"Differential pair over {kind}, {rate} Mbit/s";

    internal static string Verdict(WireFitness fitness) => fitness switch
    {
        WireFitness.Fit => Fit,
        WireFitness.Close close => $"Close: {string.Join("; ", close.Concerns.Select(Of))}.",
        WireFitness.Unfit unfit => $"NOT fit: {string.Join("; ", unfit.Concerns.Select(Of))}.",
        _ => throw new ArgumentOutOfRangeException(nameof(fitness)),
    };

    internal static string Of(WireConcern concern) => concern switch
    {
        WireConcern.NearFusing => "the current is too near to what melts the wire",
        WireConcern.CurrentDensity => "the current is above the usual table for single wires",
        WireConcern.InsulationTooHot => "the insulation gets hotter than it bears",
        WireConcern.Melts => "the wire melts, or only its cool ends keep it from melting",
        WireConcern.VoltageDrop => "too much of the supply voltage is lost",
        WireConcern.NeedsInsulation => "a bare wire must not cross bare copper",
        _ => throw new ArgumentOutOfRangeException(nameof(concern)),
    };

    internal static string Of(PairConcern concern) => concern switch
    {
        PairConcern.Skew => "the legs differ by too much of the bit time: make them equally long",
        PairConcern.OneLegOnly => "only one leg is a wire: run both as wires of the same length",
        PairConcern.NotTogether => "the wires are not kept together, so their impedance is high and unknown",
        PairConcern.TryAndTest => "fast enough that it must be tried and tested",
        PairConcern.SeldomRepairable => "so fast that wire seldom works",
        _ => throw new ArgumentOutOfRangeException(nameof(concern)),
    };

    internal static string Name(string? insulation) => insulation is null ? Bare : VisibleText.Of(insulation);

    internal static string Word(WireFitness fitness) => fitness switch
    {
        WireFitness.Fit => "fit",
        WireFitness.Close => "close",
        _ => "unfit",
    };
}
