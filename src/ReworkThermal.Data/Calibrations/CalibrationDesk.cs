using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.Data.Calibrations;

/// <summary>Turns what is kept on disk into observations of the model, and fits them.</summary>
/// <param name="workshop">Boards, joints, tools and alloys.</param>
/// <param name="engine">Phase equilibria.</param>
public sealed class CalibrationDesk(Workshop workshop, PhaseEngine engine)
{
    /// <summary>Places where a thermocouple can be.</summary>
    public static IEnumerable<string> Probes => BoardRecordReader.Probes.Keys;

    /// <summary>Fits all touches of a board.</summary>
    /// <param name="request">A request about that board: it gives room, connector and ranges.</param>
    /// <param name="touches">The touches.</param>
    /// <param name="cancellation">Stops the fit.</param>
    /// <returns>What came of the fit, and the calibration when it settled.</returns>
    /// <exception cref="DataFileException">A touch names something that no profile describes any more.</exception>
    public (FitOutcome Outcome, BenchCalibration? Learned) Fit(PlanRequest request, IReadOnlyList<ObservedTouch> touches, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(touches);
        FitOutcome outcome = new Calibrator(workshop.Alloys.Properties).Fit([.. touches.Select(t => Observation(request, t))], cancellation);
        return (outcome, outcome is FitOutcome.Fitted fit
            ? new BenchCalibration(request.BoardName, fit.Deviations, fit.Covariance, fit.Touches.Count(t => !t.IsOutlier))
            : null);
    }

    private BenchObservation Observation(PlanRequest request, ObservedTouch touch)
    {
        JointSite site = touch.Joint == request.JointName ? request.Site : Known(workshop.Profiles.Joints, touch, touch.Joint).On(request.Site.Board);
        MassFractions solder = Composition(touch, touch.Solder);
        PlanRequest bench = request with
        {
            JointName = touch.Joint,
            Site = site,
            Side = touch.Side,
            Calibration = null,
            Bench = request.Bench with
            {
                Room = request.Bench.Room with { Room = touch.Ambient },
                Contact = workshop.Profiles.Contacts[touch.Contact],
            },
        };
        SolderCharge drawn = JointSolder.ChargeIn((ThroughJoint)site.Joint, site.Board.StackUp.Thickness, solder, workshop.Alloys.Properties);
        SolderCharge mix = touch.Added is { } added ? drawn.With(new SolderCharge(touch.AddedMass, Composition(touch, added))) : drawn;
        return engine.MeltingOf(mix.Fractions) is MeltingOutcome.Found melting
            ? new BenchObservation(bench, Setting(touch), melting.Behaviour, mix.Amount / drawn.Amount, touch.Seen)
            : throw Unknown(touch, $"the melting of {mix.Fractions} could not be computed");
    }

    private ToolSetting Setting(ObservedTouch touch) => new(
        Known(workshop.Profiles.Irons, touch, touch.Iron),
        touch.Set,
        touch is { Preheater: { } preheater, Board: { } board } ? new BoardHeat(Known(workshop.Profiles.Preheaters, touch, preheater), board) : null);

    private MassFractions Composition(ObservedTouch touch, string name) => workshop.Alloys.Find(name).OrThrow(reason => Unknown(touch, reason));

    private static T Known<T>(IReadOnlyDictionary<string, T> shelf, ObservedTouch touch, string name) => shelf.TryGetValue(name, out T? item)
        ? item
        : throw Unknown(touch, $"'{BadValue.Shown(name)}' is not known; choose from {string.Join(", ", shelf.Keys)}");

    private static DataFileException Unknown(ObservedTouch touch, string rule) =>
        new([new DataFileProblem(FormattableString.Invariant($"observed touch {touch.Number}"), 0, string.Empty, rule)]);
}
