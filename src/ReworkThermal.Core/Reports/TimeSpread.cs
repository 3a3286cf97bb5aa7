using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>The time to flow on many sampled benches.</summary>
/// <param name="P10">One bench in ten is quicker; null when that is later than <paramref name="Followed"/>.</param>
/// <param name="P50">Half of the benches are quicker; null likewise.</param>
/// <param name="P90">Nine benches in ten are quicker; null likewise.</param>
/// <param name="Followed">How long a bench was followed.</param>
/// <param name="Samples">Number of benches.</param>
/// <param name="FinishedInTime">Benches that had flowed and been worked before the stop time.</param>
/// <param name="PadTooHot">Benches on which the pad passed its temperature limit.</param>
/// <param name="Influences">Inputs by falling share of the spread.</param>
/// <param name="Explained">Share of the spread that the influences explain together [1].</param>
public sealed record TimeSpread(
    Duration? P10,
    Duration? P50,
    Duration? P90,
    Duration Followed,
    int Samples,
    int FinishedInTime,
    int PadTooHot,
    IReadOnlyList<InfluenceLine> Influences,
    double Explained);
