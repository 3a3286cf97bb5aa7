using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;

namespace ReworkThermal.Data.Store;

/// <summary>The words a record uses for the members of closed lists. They are part of the file format: add, never change.</summary>
internal static class Words
{
    internal static readonly WordList<PadState> PadStates = new(
        (PadState.Sound, "sound"), (PadState.Loose, "loose"), (PadState.Missing, "missing"), (PadState.Wired, "wired"));

    internal static readonly WordList<PriorCondition> PriorHeats = new(
        (PriorCondition.Sound, "sound"), (PriorCondition.Touched, "touched"), (PriorCondition.Scorched, "scorched"));

    internal static readonly WordList<TouchPurpose> Purposes = new(
        (TouchPurpose.Mix, "mix"),
        (TouchPurpose.Wick, "wick"),
        (TouchPurpose.Lift, "lift"),
        (TouchPurpose.Refill, "refill"),
        (TouchPurpose.Wire, "wire"),
        (TouchPurpose.Preheat, "preheat"),
        (TouchPurpose.Other, "other"));

    internal static readonly WordList<SeriesOrigin> Origins = new(
        (SeriesOrigin.Simulated, "simulated"), (SeriesOrigin.Measured, "measured"));

    internal static readonly WordList<CheckResult> Results = new((CheckResult.Pass, "pass"), (CheckResult.Fail, "fail"));

    internal static readonly WordList<ShieldBond> Bonds = new((ShieldBond.Grounded, "grounded"), (ShieldBond.Separate, "separate"));
}
