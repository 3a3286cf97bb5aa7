using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Wording;

/// <summary>Words that are typed on the command line and shown in answers.</summary>
internal static class Vocabulary
{
    internal static readonly IReadOnlyDictionary<string, TouchPurpose> Purposes = new OrderedDictionary<string, TouchPurpose>(StringComparer.Ordinal)
    {
        ["mix"] = TouchPurpose.Mix,
        ["wick"] = TouchPurpose.Wick,
        ["lift"] = TouchPurpose.Lift,
        ["refill"] = TouchPurpose.Refill,
        ["wire"] = TouchPurpose.Wire,
        ["preheat"] = TouchPurpose.Preheat,
        ["other"] = TouchPurpose.Other,
    };

    internal static readonly IReadOnlyDictionary<string, PadState> States = new OrderedDictionary<string, PadState>(StringComparer.Ordinal)
    {
        ["sound"] = PadState.Sound,
        ["loose"] = PadState.Loose,
        ["missing"] = PadState.Missing,
        ["wired"] = PadState.Wired,
    };

    internal static readonly IReadOnlyDictionary<string, PriorCondition> Priors = new OrderedDictionary<string, PriorCondition>(StringComparer.Ordinal)
    {
        ["sound"] = PriorCondition.Sound,
        ["touched"] = PriorCondition.Touched,
        ["scorched"] = PriorCondition.Scorched,
    };
}
