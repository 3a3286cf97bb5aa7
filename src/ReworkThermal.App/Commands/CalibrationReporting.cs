using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Reports.Plans;
using ReworkThermal.Data.Calibrations;

namespace ReworkThermal.App.Commands;

/// <summary>Observed touches and what they taught, as an answer.</summary>
internal static class CalibrationReporting
{
    /// <summary>A board about which nothing is kept.</summary>
    /// <param name="request">A request about the board.</param>
    /// <param name="reason">Why, one clause.</param>
    /// <returns>The report.</returns>
    internal static CalibrationReport Nothing(PlanRequest request, string reason) => new(request.BoardName, [], [], reason);

    /// <summary>Touches with what came of their fit.</summary>
    /// <param name="request">A request about the board.</param>
    /// <param name="touches">The touches.</param>
    /// <param name="outcome">What came of the fit.</param>
    /// <param name="learned">The calibration; null when the fit did not settle.</param>
    /// <returns>The report.</returns>
    internal static CalibrationReport Of(PlanRequest request, IReadOnlyList<ObservedTouch> touches, FitOutcome outcome, BenchCalibration? learned)
    {
        FitOutcome.Fitted? fitted = outcome as FitOutcome.Fitted;
        IReadOnlyList<LearnedLine> inputs = learned is null
            ? []
            : [.. Calibrator.Learned(request, learned).Select(l => new LearnedLine(
                l.Input.Name, l.Input.Unit, l.Input.Central, l.LowBefore, l.HighBefore, l.Value, l.Low, l.High))];
        return new CalibrationReport(
            request.BoardName,
            [.. touches.Select((t, i) => Line(t, fitted?.Touches[i]))],
            inputs,
            (outcome as FitOutcome.NotFitted)?.Reason);
    }

    private static ObservedLine Line(ObservedTouch touch, FittedTouch? fitted) => new(
        touch.Number,
        CalibrationWords.Setting(
            touch.Iron,
            Numerals.Celsius(touch.Set, 0),
            touch.Board is { } board ? Numerals.Celsius(board, 0) : null,
            touch.Added is { } added ? $"{touch.Solder} + {Numerals.Milligrams(touch.AddedMass)} {added}" : touch.Solder),
        touch.Seen switch
        {
            Sighting.Flowed flowed => CalibrationWords.Flowed(Numerals.Seconds(flowed.After)),
            Sighting.FlowedWithin by => CalibrationWords.FlowedWithin(Numerals.Seconds(by.Within)),
            Sighting.NotFlowed not => CalibrationWords.NotFlowed(Numerals.Seconds(not.Within)),
            Sighting.Reading reading => CalibrationWords.Reading(reading.Probe, Numerals.Seconds(reading.After), Numerals.Celsius(reading.Value, 0)),
            _ => throw new InvalidOperationException("unknown kind of sighting"),
        },
        touch.Seen is Sighting.Reading ? "°C" : "s",
        fitted?.Before,
        fitted?.Expected,
        fitted?.Misfit,
        fitted?.IsOutlier ?? false);
}
