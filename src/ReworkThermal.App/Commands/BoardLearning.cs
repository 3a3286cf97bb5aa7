using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Data.Calibrations;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.App.Commands;

/// <summary>Keeps the observed touches of a model of board and fits them anew after every change, for the commands and for the bench clock.</summary>
/// <param name="folder">Where they are kept.</param>
/// <param name="workshop">Boards, joints, tools and alloys.</param>
/// <param name="engine">Phase equilibria.</param>
internal sealed class BoardLearning(CalibrationFolder folder, Workshop workshop, PhaseEngine engine)
{
    /// <summary>The number that the next observed touch gets.</summary>
    /// <param name="before">The touches so far.</param>
    /// <returns>One more than the greatest; 1 for the first.</returns>
    internal static int NextNumber(IReadOnlyList<ObservedTouch> before) => before.Select(t => t.Number).DefaultIfEmpty(0).Max() + 1;

    /// <summary>What touches teach.</summary>
    /// <param name="request">A request about the board.</param>
    /// <param name="touches">The touches, at least one.</param>
    /// <param name="cancellation">Stops the fit.</param>
    /// <returns>What came of the fit, and the calibration when it settled.</returns>
    internal (FitOutcome Outcome, BenchCalibration? Learned) Fit(PlanRequest request, IReadOnlyList<ObservedTouch> touches, CancellationToken cancellation) =>
        new CalibrationDesk(workshop, engine).Fit(request, touches, cancellation);

    /// <summary>Keeps touches in place of those before, with what they teach.</summary>
    /// <param name="request">A request about the board.</param>
    /// <param name="touches">The touches, at least one.</param>
    /// <param name="cancellation">Stops the fit.</param>
    /// <returns>As <see cref="Fit"/>.</returns>
    internal (FitOutcome Outcome, BenchCalibration? Learned) Keep(PlanRequest request, IReadOnlyList<ObservedTouch> touches, CancellationToken cancellation)
    {
        (FitOutcome Outcome, BenchCalibration? Learned) fit = Fit(request, touches, cancellation);
        folder.Keep(new BoardRecord(request.BoardName, touches, fit.Learned));
        return fit;
    }
}
