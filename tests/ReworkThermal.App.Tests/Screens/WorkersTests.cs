using System.Collections.Concurrent;
using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.Running;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data;
using ReworkThermal.Data.Calibrations;
using ReworkThermal.Data.Requests;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Tests.Screens;

/// <summary>What the threads behind the screens say when files are not in order.</summary>
public sealed class WorkersTests
{
    [Fact]
    public void Without_readable_data_a_plan_says_so_and_not_that_reading_goes_on()
    {
        using BlockingCollection<Message> posted = [];
        BenchDesks desks = new(
            () => throw new NotSupportedException(),
            () => throw new DataFileException([new DataFileProblem("alloys/elements.toml", 1, "name", "is missing")]),
            null);
        using Workers workers = new(desks, new ScreenSignals(_ => { }, () => { }), posted.Add);
        workers.Start();
        workers.Take(new Errand.RunPlan(1, PlanForm.Usual, null));
        Assert.Contains("alloys/elements.toml", Next<Message.ShelfBroken>(posted).Reason, StringComparison.Ordinal);
        Assert.Equal(ScreenWords.NoShelf, Assert.IsType<PlanAnswer.NotAvailable>(Next<Message.PlanEnded>(posted).Answer).Reason);
        workers.Finish();
    }

    [Fact]
    public void A_calibration_that_cannot_be_read_is_no_fault_of_the_program()
    {
        using TemporaryFolder folder = new();
        folder.Write("six-layer-controller.toml", "touches = [");
        using InMemoryJobStore store = new();
        JobDesk desk = new(store, TimeProvider.System, new RandomIdSource());
        RecordOutcome opened = desk.Open(new JobBrief("label", "six-layer-controller", "jack-anchor-six-layer"));
        JobState job = Assert.IsType<RecordOutcome.Recorded>(opened).State;
        JobWorkshop workshop = new(DataRoot.BesideProgram, Workshop.Load(DataRoot.BesideProgram), new MeltingShelf(DataRoot.BesideProgram));
        PlanForm bench = PlanForm.Usual.With(PlanField.Room, UsualBench.Room).With(PlanField.Removal, UsualBench.Removal);
        LessonAnswer? answer = new LessonDesk(workshop, new CalibrationFolder(folder.Path)).Forget(job, 1, bench, CancellationToken.None);
        Assert.Contains("six-layer-controller.toml", Assert.IsType<LessonAnswer.NotTakenBack>(answer).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Work_that_is_broken_off_may_still_look_at_its_cancellation()
    {
        using ManualResetEventSlim began = new();
        using ManualResetEventSlim closed = new();
        Exception? thrown = null;
        bool asked = false;
        LatestWorker<string> worker = new("test", (_, cancellation) =>
        {
            began.Set();
            closed.Wait(CancellationToken.None);
            thrown = Record.Exception(() => asked = cancellation.WaitHandle.WaitOne(TimeSpan.FromSeconds(30)));
        });
        worker.Ask("question");
        began.Wait();
        worker.Dispose();
        closed.Set();
        worker.Finish();
        Assert.Null(thrown);
        Assert.True(asked);
    }

    [Fact]
    public void A_plan_that_waited_behind_another_when_the_program_ended_is_no_fault()
    {
        using BlockingCollection<Message> posted = [];
        using ScriptedBench engines = new();
        engines.PlanGate.Reset();
        Workers workers = new(new BenchDesks(() => throw new NotSupportedException(), engines.Open, null), new ScreenSignals(_ => { }, () => { }), posted.Add);
        workers.Start();
        workers.Take(new Errand.RunPlan(1, PlanForm.Usual, null));
        _ = Next<Message.PlanMoved>(posted);
        workers.Take(new Errand.RunPlan(2, PlanForm.Usual, null));
        workers.Dispose();
        engines.Release();
        workers.Finish();
        Assert.DoesNotContain(posted, m => m is Message.Faulted);
        workers.Dispose();
    }

    private static T Next<T>(BlockingCollection<Message> posted)
        where T : Message
    {
        while (true)
        {
            Assert.True(posted.TryTake(out Message? message, TimeSpan.FromSeconds(30)), $"no {typeof(T).Name} was posted");
            if (message is T wanted)
            {
                return wanted;
            }
        }
    }
}
