using UnitsNet;

namespace ReworkThermal.Core.Jobs;

/// <summary>What a logged touch must look like.</summary>
internal static class ExposureRules
{
    /// <summary>Says why a touch cannot be logged.</summary>
    /// <param name="gate">The job so far.</param>
    /// <param name="logged">The touch.</param>
    /// <returns>Null when it can, else one clause.</returns>
    internal static string? Fault(JobGate gate, JobEvent.ExposureLogged logged)
    {
        Exposure exposure = logged.Exposure;
        return (logged.Ends is int start ? JobRules.OpenTouch(gate, start) : null)
            ?? JobRules.Tools(exposure.Tools)
            ?? JobRules.Within("the dwell", exposure.Dwell, JobRules.SecondsPerDay)
            ?? JobRules.SomePads(gate, [.. exposure.Pads.Select(p => p.Pad)])
            ?? (exposure.StartedAt.Year is < 2000 or > 2200 ? "the touch must have begun between the years 2000 and 2200" : null)
            ?? (exposure.BoardAtStart is Temperature board ? JobRules.Within("the board temperature", board) : null)
            ?? JobRules.Each(exposure.Pads, Share)
            ?? JobRules.Added(exposure.Added)
            ?? EventText.Optional("the mix", exposure.Mix)
            ?? EventText.Optional("the note", exposure.Note);
    }

    private static string? Share(HeatedPad share)
    {
        if (share.Series is not { } series)
        {
            return null;
        }

        ReadOnlySpan<double> seconds = series.History.Seconds;
        return seconds[0] < 0 || seconds[^1] > JobRules.SecondsPerDay
            ? $"the temperature series of pad {share.Pad} must lie between 0 s, the beginning of the touch, and one day"
            : series.History.PeakCelsius > 2000
                ? $"the temperature series of pad {share.Pad} must stay below 2000 °C"
                : null;
    }
}
