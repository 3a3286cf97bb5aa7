using ReworkThermal.App.Screens.Desks;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Something to be done outside the screens; what comes of it returns as a <see cref="Message"/>.</summary>
internal abstract record Errand
{
    private Errand()
    {
    }

    /// <summary>List the jobs.</summary>
    internal sealed record ListJobs : Errand;

    /// <summary>Read a job.</summary>
    internal sealed record LoadJob(JobId Job) : Errand;

    /// <summary>Open a job.</summary>
    internal sealed record OpenJob(JobBrief Brief) : Errand;

    /// <summary>Record events, one after the other, until one is refused.</summary>
    internal sealed record Record(JobId Job, IReadOnlyList<JobEvent> Events, RecordedFor Purpose) : Errand;

    /// <summary>Write a job's record to a file.</summary>
    internal sealed record Export(JobId Job, string Path) : Errand;

    /// <summary>Write all jobs to a new store and go on there.</summary>
    internal sealed record WriteElsewhere(string Path) : Errand;

    /// <summary>Reckon the budgets of a job; an earlier such errand may be skipped.</summary>
    internal sealed record ReckonBudgets(JobState Job) : Errand;

    /// <summary>Reckon a mix; an earlier such errand may be skipped.</summary>
    internal sealed record ReckonMix(int Turn, MixQuestion Question) : Errand;

    /// <summary>Teach the bench from a timed measurement.</summary>
    internal sealed record Learn(JobState Job, int Number, TimedMeasurement Measurement, Lesson Lesson) : Errand;

    /// <summary>Take back what a voided measurement taught.</summary>
    internal sealed record Unlearn(JobState Job, int Number, PlanForm Bench) : Errand;

    /// <summary>Write the record for handing over.</summary>
    internal sealed record WriteRecord(JobState Job, bool Replace) : Errand;

    /// <summary>Make plans.</summary>
    internal sealed record RunPlan(int Turn, PlanForm Form, JobState? Job) : Errand;

    /// <summary>Break the plan run off.</summary>
    internal sealed record CancelPlan : Errand;

    /// <summary>Begin to simulate a touch.</summary>
    internal sealed record BeginRun(int Turn, TouchSetup Setup) : Errand;

    /// <summary>Take the simulation on to a time; an earlier such errand may be skipped.</summary>
    internal sealed record AdvanceRun(int Turn, TimeSpan Elapsed) : Errand;

    /// <summary>The tool came off.</summary>
    internal sealed record ReleaseRun(int Turn, TimeSpan Elapsed) : Errand;

    /// <summary>Take the cooling on to a time; an earlier such errand may be skipped.</summary>
    internal sealed record CoolRun(int Turn, TimeSpan SinceRelease) : Errand;

    /// <summary>Ring the terminal's bell.</summary>
    internal sealed record Ring(int Times) : Errand;

    /// <summary>Read what was being typed when the program ended before.</summary>
    internal sealed record ReadDrafts : Errand;

    /// <summary>Keep these drafts and no other.</summary>
    internal sealed record KeepDrafts(IReadOnlyList<Draft> Drafts) : Errand;

    /// <summary>Leave the program.</summary>
    internal sealed record Leave : Errand;
}
