using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

/// <summary>What every job store must do; run on each kind.</summary>
public abstract class JobStoreContract
{
    private static readonly JobId _a = new("aaaaaa");
    private static readonly JobId _b = new("bbbbbb");
    private static readonly DateTimeOffset _at = new DateTimeOffset(2026, 1, 2, 3, 4, 5, TimeSpan.FromHours(2)).AddTicks(1_234_567);

    protected abstract IJobStore Create();

    [Fact]
    public void An_empty_store_has_no_jobs()
    {
        using IJobStore store = Create();
        Assert.Empty(store.List());
        Assert.Empty(store.Read(_a));
    }

    [Fact]
    public void An_entry_is_read_back_with_its_number_and_its_time_in_UTC_to_the_millisecond()
    {
        using IJobStore store = Create();
        AppendOutcome.Written written = Assert.IsType<AppendOutcome.Written>(store.Append(_a, 0, _at, Opened("A")));
        JobEntry entry = Assert.Single(store.Read(_a));
        Assert.Equal(written.Entry, entry);
        Assert.Equal(1, entry.Number);
        Assert.Equal(new DateTimeOffset(2026, 1, 2, 1, 4, 5, 123, TimeSpan.Zero), entry.At);
        Assert.Equal(TimeSpan.Zero, entry.At.Offset);
        Assert.Equal(Opened("A"), entry.What);
    }

    [Fact]
    public void A_stale_append_changes_nothing_and_says_how_far_the_job_is()
    {
        using IJobStore store = Create();
        _ = store.Append(_a, 0, _at, Opened("A"));
        _ = store.Append(_a, 1, _at, new JobEvent.CautionsShown());
        Assert.Equal(new AppendOutcome.Overtaken(2), store.Append(_a, 1, _at, new JobEvent.JobClosed(null)));
        Assert.Equal(new AppendOutcome.Overtaken(0), store.Append(_b, 1, _at, new JobEvent.JobClosed(null)));
        Assert.Equal(2, store.Read(_a).Count);
        Assert.Empty(store.Read(_b));
        _ = Assert.Single(store.List());
    }

    [Fact]
    public void Reading_after_a_number_gives_only_what_came_later()
    {
        using IJobStore store = Create();
        JobId id = SampleJobs.RecordEverything(SampleJobs.Desk(store));
        Assert.Equal([28, 29, 30], store.Read(id, 27).Select(e => e.Number));
        Assert.Empty(store.Read(id, 30));
    }

    [Fact]
    public void Headers_follow_revisions_closing_and_reopening_in_the_order_of_opening()
    {
        using IJobStore store = Create();
        JobDesk desk = SampleJobs.Desk(store);
        JobId first = Assert.IsType<RecordOutcome.Recorded>(desk.Open(new JobBrief("first"))).State.Id;
        JobId second = Assert.IsType<RecordOutcome.Recorded>(desk.Open(new JobBrief("second"))).State.Id;
        _ = desk.Record(first, new JobEvent.BriefRevised(new JobBrief("renamed")));
        _ = desk.Record(first, new JobEvent.JobClosed(null));
        _ = desk.Record(second, new JobEvent.JobClosed(null));
        _ = desk.Record(second, new JobEvent.JobReopened("more"));
        IReadOnlyList<JobHeader> headers = store.List();
        Assert.Equal([first, second], headers.Select(h => h.Id));
        Assert.Equal(["renamed", "second"], headers.Select(h => h.Brief.Label));
        Assert.Equal([JobStatus.Closed, JobStatus.Open], headers.Select(h => h.Status));
        Assert.Equal([3, 3], headers.Select(h => h.LastNumber));
        Assert.All(headers, h => Assert.True(h.LastAt > h.OpenedAt));
    }

    [Fact]
    public void Many_entries_are_added_all_or_none()
    {
        using IJobStore store = Create();
        _ = store.Append(_b, 0, _at, Opened("B"));
        JobLog fits = new(_a, [new JobEntry(1, _at.ToUniversalTime(), Opened("A")), new JobEntry(2, _at.ToUniversalTime(), new JobEvent.CautionsShown())]);
        JobLog late = new(_b, [new JobEntry(1, _at.ToUniversalTime(), Opened("B"))]);
        Assert.Equal(new BatchOutcome.Overtaken(_b), store.AppendAll([fits, late]));
        Assert.Empty(store.Read(_a));
        Assert.Equal(new BatchOutcome.Written(2), store.AppendAll([fits, new JobLog(_b, [])]));
        Assert.Equal(2, store.Read(_a).Count);
    }

    [Fact]
    public void Every_kind_of_event_comes_back_as_it_was()
    {
        using IJobStore store = Create();
        JobDesk desk = SampleJobs.Desk(store);
        JobId id = SampleJobs.RecordEverything(desk);
        using InMemoryJobStore expected = new();
        _ = expected.AppendAll([new JobLog(id, [.. SampleJobs.EveryEvent.Select((e, i) => new JobEntry(i + 1, SampleJobs.Start, e))])]);
        using InMemoryJobStore actual = new();
        _ = actual.AppendAll([new JobLog(id, [.. store.Read(id).Select(e => e with { At = SampleJobs.Start })])]);
        Assert.Equal(SampleJobs.Canonical(expected), SampleJobs.Canonical(actual));
        Assert.Equal(SampleJobs.EveryEvent.Count, SampleJobs.EveryEvent.Select(e => e.GetType()).Distinct().Count() + 12);
    }

    [Fact]
    public void Control_characters_and_escapes_are_kept_as_typed()
    {
        using IJobStore store = Create();
        JobId id = SampleJobs.RecordEverything(SampleJobs.Desk(store));
        JobEvent.JobOpened opened = Assert.IsType<JobEvent.JobOpened>(store.Read(id)[0].What);
        Assert.Equal(((JobEvent.JobOpened)SampleJobs.EveryEvent[0]).Brief.Label, opened.Brief.Label);
    }

    private static JobEvent.JobOpened Opened(string label) => new(new JobBrief(label));
}
