using System.Globalization;
using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Data;
using ReworkThermal.Data.Calibrations;
using UnitsNet;
using ToolSetting = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Feeds timed touches to the same calibrations as the command <c>calibrate add</c>.</summary>
/// <param name="workshop">The data folders; used on the thread of the lessons only.</param>
/// <param name="calibrations">Where calibrations are kept.</param>
internal sealed class LessonDesk(JobWorkshop workshop, CalibrationFolder calibrations) : ILessonDesk
{
    private readonly PlanRequests _requests = new(workshop);
    private readonly BoardLearning _learning = new(calibrations, workshop.Workshop, workshop.Melting.Engine);

    public LessonAnswer Learn(JobState job, int number, TimedMeasurement measurement, Lesson lesson, CancellationToken cancellation)
    {
        if ((lesson.WhyNot ?? Unfit(measurement, lesson)) is { } reason)
        {
            return new LessonAnswer.NotLearned(reason);
        }

        if (Request(job, lesson.Bench, measurement.Pad) is not { } request)
        {
            return new LessonAnswer.NotLearned(ScreenLessonWords.NoSite);
        }

        try
        {
            IReadOnlyList<ObservedTouch> before = calibrations.Find(request.BoardName)?.Touches ?? [];
            return before.Any(t => t.Origin == Origin(job, number))
                ? new LessonAnswer.NotLearned(ScreenLessonWords.KnownAlready)
                : Refitted(request, [.. before, Observed(job, number, measurement, lesson, request, before)], cancellation);
        }
        catch (DataFileException broken)
        {
            return new LessonAnswer.NotLearned(broken.Problems[0].ToString());
        }
    }

    public LessonAnswer? Forget(JobState job, int number, PlanForm bench, CancellationToken cancellation)
    {
        try
        {
            return Request(job, bench, pad: null) is { } request && calibrations.Find(request.BoardName) is { } record
                ? Without(record, Origin(job, number), request, cancellation)
                : null;
        }
        catch (DataFileException broken)
        {
            return new LessonAnswer.NotTakenBack(broken.Problems[0].ToString());
        }
    }

    private LessonAnswer.TakenBack? Without(BoardRecord record, string origin, PlanRequest request, CancellationToken cancellation)
    {
        List<ObservedTouch> left = [.. record.Touches.Where(t => t.Origin != origin)];
        if (left.Count == record.Touches.Count)
        {
            return null;
        }

        if (left.Count == 0)
        {
            calibrations.Forget(request.BoardName);
        }
        else
        {
            _ = Refitted(request, left, cancellation);
        }

        return new LessonAnswer.TakenBack(left.Count);
    }

    private static string Origin(JobState job, int number) => string.Create(CultureInfo.InvariantCulture, $"job {job.Id}, entry {number}");

    private LessonAnswer Refitted(PlanRequest request, IReadOnlyList<ObservedTouch> touches, CancellationToken cancellation)
    {
        (FitOutcome outcome, BenchCalibration? learned) = _learning.Keep(request, touches, cancellation);
        return learned is not null
            ? new LessonAnswer.Learned(learned.Observations)
            : new LessonAnswer.NotLearned(outcome is FitOutcome.NotFitted none ? none.Reason : ScreenLessonWords.NoFit);
    }

    private string? Unfit(TimedMeasurement measurement, Lesson lesson) => measurement.Tools switch
    {
        _ when lesson.Added is { Mass: null } => ScreenLessonWords.UnknownMass,
        var tools when tools.Any(t => t is not (ToolSetting.Iron or ToolSetting.Preheater)) => ScreenLessonWords.IronOnly,
        var tools when tools.OfType<ToolSetting.Iron>().FirstOrDefault() is not { Profile: { } iron } || !workshop.Workshop.Profiles.Irons.ContainsKey(iron) => ScreenLessonWords.IronOnly,
        var tools when tools.OfType<ToolSetting.Preheater>().Any(t => t.Profile is not { } heater || !workshop.Workshop.Profiles.Preheaters.ContainsKey(heater)) => ScreenLessonWords.UnknownHeater,
        _ => null,
    };

    private PlanRequest? Request(JobState job, PlanForm bench, PadId? pad) => job.Brief is { Board: { } board, Joint: { } joint }
        ? _requests.Of(
            bench.With(PlanField.Board, board)
                .With(PlanField.Joint, pad is null ? joint : job.Pads[pad].Joint ?? joint)
                .With(PlanField.BaseSolder, Solder(job, bench)),
            out _)
        : null;

    private static string Solder(JobState job, PlanForm bench) => job.Brief.BaseSolder ?? bench[PlanField.BaseSolder];

    private static ObservedTouch Observed(JobState job, int number, TimedMeasurement measurement, Lesson lesson, PlanRequest request, IReadOnlyList<ObservedTouch> before)
    {
        ToolSetting.Iron iron = measurement.Tools.OfType<ToolSetting.Iron>().First();
        ToolSetting.Preheater? heater = measurement.Tools.OfType<ToolSetting.Preheater>().FirstOrDefault();
        return new ObservedTouch
        {
            Number = BoardLearning.NextNumber(before),
            Joint = request.JointName,
            Side = request.Side,
            Ambient = request.Bench.Room.Room,
            Contact = iron.Contact ?? request.Bench.Contact.State,
            Solder = Solder(job, lesson.Bench),
            Added = lesson.Added?.Designation,
            AddedMass = lesson.Added?.Mass ?? Mass.Zero,
            Iron = iron.Profile!,
            Set = iron.Set,
            Preheater = heater?.Profile,
            Board = heater?.Set,
            Origin = Origin(job, number),
            Seen = measurement switch
            {
                TimedMeasurement.Flow flow => new Sighting.Flowed(flow.TimeToFlow),
                TimedMeasurement.FlowedWithin by => new Sighting.FlowedWithin(by.Within),
                TimedMeasurement.NotFlowed not => new Sighting.NotFlowed(not.Within),
                _ => throw new ArgumentException("not a sighting of flow", nameof(measurement)),
            },
        };
    }
}
