using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Data.Toml;

/// <summary>The words a data file uses for evidence marks.</summary>
internal static class Marks
{
    internal static readonly IReadOnlyDictionary<string, EvidenceMark> ByWord = new Dictionary<string, EvidenceMark>(StringComparer.Ordinal)
    {
        ["seen"] = EvidenceMark.Seen,
        ["second-hand"] = EvidenceMark.SecondHand,
        ["computed"] = EvidenceMark.Computed,
        ["memory"] = EvidenceMark.Memory,
        ["judgement"] = EvidenceMark.Judgement,
        ["practice"] = EvidenceMark.Practice,
    };
}
