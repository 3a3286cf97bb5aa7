using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.Running;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data;
using ReworkThermal.Data.Calibrations;
using ReworkThermal.Data.Requests;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>The desks of the running program: the store on disk, the engines over the data folders.</summary>
internal static class RealDesks
{
    internal static BenchDesks For(ScreenOptions options, DataRoot data) => new(
        () => new JobBook(SqliteJobStore.Open(options.Store ?? StorePlace.Default()), TimeProvider.System, new RandomIdSource(), () => Outputs.Of(data, options.Store)),
        () => Open(data, options.Calibrations ?? CalibrationPlace.Default(), Environment.CurrentDirectory, options.Store),
        Drafts(options));

    /// <summary>Beside the store; where the environment names no place for that, opening the store says so.</summary>
    private static DraftFile? Drafts(ScreenOptions options)
    {
        try
        {
            return new DraftFile(options.Store ?? StorePlace.Default());
        }
        catch (JobStoreException)
        {
            return null;
        }
    }

    internal static Workbench Open(DataRoot data, string calibrations, string records, string? store = null)
    {
        Workshop workshop = Workshop.Load(data);
        MeltingShelf melting = new(data);
        ShelfNames names = new(
            [.. workshop.Profiles.Boards.Keys],
            [.. workshop.Profiles.Joints.Keys],
            [.. workshop.Profiles.Connectors.Keys],
            [.. workshop.Alloys.Solders.Select(a => a.Name)],
            [.. workshop.Alloys.Dilutions.Select(a => a.Name)],
            [.. workshop.Profiles.Irons.Keys],
            [.. workshop.Profiles.Nozzles.Keys],
            [.. workshop.Profiles.Preheaters.Keys],
            [.. workshop.Removals.Select(r => r.Name)],
            [.. workshop.Limits.Priors.Select(p => p.Name)],
            [.. workshop.Profiles.Rooms.Keys],
            workshop.Profiles.Irons.Select(i => (i.Key, i.Value.Name)).Concat(workshop.Profiles.Nozzles.Select(n => (n.Key, n.Value.Name))).Concat(workshop.Profiles.Preheaters.Select(p => (p.Key, p.Value.Name)))
                .DistinctBy(t => t.Name)
                .ToDictionary(t => t.Name, t => t.Key));
        CalibrationFolder learned = new(calibrations);
        return new Workbench(
            names,
            new MixDesk(workshop, melting.Engine),
            new PlanDesk(ForOneThread(), learned),
            new BenchRuns(ForOneThread()),
            new BudgetDesk(ForOneThread()),
            new LessonDesk(ForOneThread(), learned),
            new RecordDesk(data, ForOneThread(), records, () => Outputs.Of(data, store)));

        JobWorkshop ForOneThread() => new(data, workshop, melting);
    }
}
