using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Writes a job's record for handing over. Called on a background thread.</summary>
internal interface IRecordDesk
{
    /// <summary>Writes it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="replace">Whether files that are there may be replaced.</param>
    public RecordAnswer Write(JobState job, bool replace);
}
