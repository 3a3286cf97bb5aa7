using UnitsNet;

namespace ReworkThermal.Core.Reports.Plans;

/// <summary>What a repair is likely to take, before it is accepted.</summary>
/// <param name="Title">The request.</param>
/// <param name="PlanKind">Kind of the plan that all joints are worked by.</param>
/// <param name="Pads">One line per pad.</param>
/// <param name="Touches">Touches of the whole job.</param>
/// <param name="Least">Bench time at the favourable end.</param>
/// <param name="Likely">Bench time with central figures.</param>
/// <param name="Most">Bench time at the unfavourable end.</param>
/// <param name="WiresCertain">Pads that are gone and need a wire.</param>
/// <param name="WiresPossible">Pads that may need one.</param>
/// <param name="Bands">Pads per band after the work: name, with central figures, at worst.</param>
/// <param name="Notes">What was assumed, one sentence each.</param>
public sealed record TriageReport(
    string Title,
    string PlanKind,
    IReadOnlyList<PadOutlook> Pads,
    int Touches,
    Duration Least,
    Duration Likely,
    Duration Most,
    int WiresCertain,
    int WiresPossible,
    IReadOnlyList<BandCount> Bands,
    IReadOnlyList<string> Notes);

/// <summary>Pads in a band after the work.</summary>
/// <param name="Band">Name of the band.</param>
/// <param name="Central">Pads with central figures.</param>
/// <param name="AtWorst">Pads with every figure at its unfavourable end.</param>
public sealed record BandCount(string Band, int Central, int AtWorst);

/// <summary>What is to be expected of one pad.</summary>
/// <param name="Pad">The pad.</param>
/// <param name="State">What it looks like.</param>
/// <param name="Prior">Assumed earlier heat.</param>
/// <param name="Touches">Touches the plan gives it.</param>
/// <param name="Before">Band before; null for a pad that is gone.</param>
/// <param name="After">Band after, central figures; null for a pad that is gone.</param>
/// <param name="AtWorst">Band after, unfavourable ends; null for a pad that is gone.</param>
/// <param name="Wire">"no", "possible" or "certain".</param>
/// <param name="Reason">Why, one sentence.</param>
public sealed record PadOutlook(string Pad, string State, string Prior, int Touches, string? Before, string? After, string? AtWorst, string Wire, string Reason);
