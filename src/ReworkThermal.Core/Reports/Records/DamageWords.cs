using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Pulling;

namespace ReworkThermal.Core.Reports.Records;

/// <summary>Names of gauges, bands and support, the same in every report.</summary>
public static class DamageWords
{
    /// <summary>Name of a gauge.</summary>
    /// <param name="kind">Which.</param>
    /// <returns>One word.</returns>
    public static string NameOf(GaugeKind kind) => kind switch
    {
        GaugeKind.Laminate => "laminate",
        GaugeKind.Adhesion => "adhesion",
        GaugeKind.Copper => "copper",
        GaugeKind.Barrel => "barrel",
        GaugeKind.Melts => "melts",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    /// <summary>Name of a band.</summary>
    /// <param name="band">Which.</param>
    /// <returns>One word.</returns>
    public static string NameOf(DamageBand band) => band switch
    {
        DamageBand.Low => "low",
        DamageBand.Raised => "raised",
        DamageBand.High => "high",
        DamageBand.Stop => "stop",
        _ => throw new ArgumentOutOfRangeException(nameof(band)),
    };

    /// <summary>How far the literature carries a figure.</summary>
    /// <param name="support">How far.</param>
    /// <returns>One or two words.</returns>
    public static string NameOf(SupportLevel support) => support switch
    {
        SupportLevel.Supported => "supported",
        SupportLevel.SupportedInForm => "form only",
        SupportLevel.Judgement => "judgement",
        _ => throw new ArgumentOutOfRangeException(nameof(support)),
    };

    /// <summary>Name of a way of pulling.</summary>
    /// <param name="demand">Which.</param>
    /// <returns>Two words.</returns>
    public static string NameOf(PullDemand demand) => demand switch
    {
        PullDemand.Free => "free lead",
        PullDemand.Nudged => "nudged lead",
        PullDemand.Pried => "pried lead",
        _ => throw new ArgumentOutOfRangeException(nameof(demand)),
    };

    /// <summary>What a margin says.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <returns>One word.</returns>
    public static string NameOf(PullOutcome outcome) => outcome switch
    {
        PullOutcome.Holds => "holds",
        PullOutcome.Doubtful => "doubtful",
        PullOutcome.Tears => "tears",
        _ => throw new ArgumentOutOfRangeException(nameof(outcome)),
    };
}
