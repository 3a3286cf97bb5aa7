using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The list of jobs, and taking one up.</summary>
internal static class JobListUpdate
{
    internal static Step Apply(BenchState state, Press press)
    {
        IReadOnlyList<JobHeader> jobs = state.Jobs.Jobs ?? [];
        if (Rows.After(state.Jobs.Row, jobs.Count, press) is int row)
        {
            return new Step(state with { Jobs = state.Jobs with { Row = row } });
        }

        return press switch
        {
            { Letter: 'n' } => EntryOpening.Open(state, new EntryFor.NewJob()),
            { Kind: PressKind.Enter } when jobs.Count > 0 => new Step(state).Do(new Errand.LoadJob(jobs[Math.Min(state.Jobs.Row, jobs.Count - 1)].Id)),
            { Kind: PressKind.Escape } when state.Job is not null => new Step(state with { Jobs = state.Jobs with { Shown = false } }),
            _ => new Step(state),
        };
    }

    /// <summary>The store's jobs arrived; a job with an interrupted touch is taken up at once.</summary>
    internal static Step Listed(BenchState state, Message.JobsListed listed)
    {
        List<JobHeader> sorted = [.. listed.Jobs.OrderBy(j => j.Status).ThenByDescending(j => j.LastAt)];
        BenchState next = state with
        {
            Jobs = state.Jobs with { Jobs = sorted, Row = Math.Clamp(state.Jobs.Row, 0, Math.Max(0, sorted.Count - 1)) },
            StoreTrouble = null,
        };
        return listed.Interrupted is { } interrupted && state is { Job: null, Entry: null } ? Loaded(next, interrupted) : new Step(next);
    }

    /// <summary>A job was read, new or old.</summary>
    internal static Step Loaded(BenchState state, JobState job)
    {
        bool other = state.Job?.Id != job.Id;
        BenchState next = state with
        {
            Job = job,
            Jobs = state.Jobs with { Shown = false },
            Entry = null,
            Budgets = other ? new Dictionary<PadId, Desks.PadBudget>() : state.Budgets,
            JobPlace = other ? new JobPlaceState() : state.JobPlace,
            Record = other ? new RecordState() : state.Record,
            Clock = other ? ClockSettings.SetUp(job, state.Clock) : state.Clock,
            Overlay = job is { CautionsShown: false, Status: JobStatus.Open } ? Overlay.Cautions : state.Overlay,
            Place = job.OpenTouches.Count > 0 ? Place.Clock : state.Place,
            StoreTrouble = null,
        };
        Step step = new Step(ShelfUpdate.FromJob(next)).Do(new Errand.ReckonBudgets(job));
        return next.Mix.Turn > 0 ? MixUpdate.Ask(step.State, step.State.Mix.Question, step.Errands) : step;
    }
}
