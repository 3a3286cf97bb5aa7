using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Timed touches teach the bench: what is seen of the flow goes into the record, and from there to the calibration.</summary>
internal static class LessonUpdate
{
    /// <summary>What the touch just made may teach.</summary>
    internal static Lesson Of(BenchState state, TouchStage.Running touch) => new(
        state.Plan.Form,
        touch.Start.Added,
        touch.Start.Purpose is not (TouchPurpose.Mix or TouchPurpose.Wick or TouchPurpose.Lift) ? ScreenLessonWords.OtherPurpose
            : state.Clock.Forecast is not { } forecast ? ScreenLessonWords.NotSimulated
            : forecast.Fresh ? null
            : forecast.WarmStartC is null ? ScreenLessonWords.NotFull : ScreenLessonWords.WarmBoard);

    /// <summary>A measurement is in the record: on to the calibration.</summary>
    internal static Step Kept(Step step, JobState job, JobEntry entry, RecordedFor purpose) => entry.What switch
    {
        JobEvent.MeasurementTaken taken when purpose.Lesson is { } lesson => step.Do(new Errand.Learn(job, entry.Number, taken.Measurement, lesson)),
        JobEvent.EntryVoided voided when job.Entries.FirstOrDefault(e => e.Number == voided.Number) is { What: JobEvent.MeasurementTaken } =>
            step.Do(new Errand.Unlearn(job, voided.Number, step.State.Plan.Form)),
        _ => step,
    };

    internal static Step Taught(BenchState state, LessonAnswer answer) => new Step(state).Say(answer switch
    {
        LessonAnswer.Learned learned => ScreenLessonWords.Learned(learned.Touches),
        LessonAnswer.NotLearned none => ScreenLessonWords.NotLearned(none.Reason),
        LessonAnswer.NotTakenBack none => ScreenLessonWords.NotTakenBack(none.Reason),
        LessonAnswer.TakenBack back => ScreenLessonWords.TakenBack(back.Touches),
        _ => throw new InvalidOperationException("unknown kind of lesson"),
    });
}
