using UnitsNet;

namespace ReworkThermal.Core.Reports;

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
