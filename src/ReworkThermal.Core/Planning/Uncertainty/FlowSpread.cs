using UnitsNet;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>
/// What came of the first touch of a plan on many sampled benches. Counts are counts of sampled benches, drawn from stated ranges; they
/// are no probability of lifting a pad.
/// </summary>
/// <param name="Samples">Number of benches.</param>
/// <param name="Followed">How long each was followed.</param>
/// <param name="P10">Time to flow of the quickest tenth.</param>
/// <param name="P50">Time to flow of the quicker half.</param>
/// <param name="P90">Time to flow of all but the slowest tenth.</param>
/// <param name="FinishedInTime">Benches on which the joint had flowed and been worked before the stop time of the plan.</param>
/// <param name="PadTooHot">Benches on which the pad passed its temperature limit before the touch was done or stopped.</param>
/// <param name="Influences">Inputs by falling share; sums to <paramref name="Explained"/>.</param>
/// <param name="Explained">Share of the spread that a linear rank regression explains, 0 to 1; influences are to be read only when it is high.</param>
public sealed record FlowSpread(
    int Samples,
    Duration Followed,
    SampledTime P10,
    SampledTime P50,
    SampledTime P90,
    int FinishedInTime,
    int PadTooHot,
    IReadOnlyList<Influence> Influences,
    double Explained);
