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
            () => throw new DataFileException([new DataFileProblem("alloys/elements.toml", 1, "name", "is missing")]));
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
