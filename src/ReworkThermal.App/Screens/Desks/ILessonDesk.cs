using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Feeds timed measurements of jobs to the calibration of their model of board. Called on a background thread.</summary>
internal interface ILessonDesk
{
    /// <summary>Learns from a measurement.</summary>
    /// <param name="job">The job.</param>
    /// <param name="number">Number of the measurement's entry.</param>
    /// <param name="measurement">The measurement.</param>
    /// <param name="lesson">What else is known of the touch.</param>
    /// <param name="cancellation">Stops the fit.</param>
    public LessonAnswer Learn(JobState job, int number, TimedMeasurement measurement, Lesson lesson, CancellationToken cancellation);

    /// <summary>Takes a measurement back; null when it had taught nothing.</summary>
    public LessonAnswer? Forget(JobState job, int number, PlanForm bench, CancellationToken cancellation);
}
