// A second process for the fault tests of the job store: adds to a store and prints the number of the last entry of every addition the store
// has confirmed. Exit 0: all written; 1: refused by the rules; 4: the store refused, its message on standard error.
// Arguments: store file, job, then
//   touches PAD COUNT      touches, one at a time
//   looks PADS COUNT       looks at all pads named, commas between, as one addition each
//   import FILE COUNT      the jobs of an exported file
using System.Globalization;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;
using UnitsNet;

try
{
    using SqliteJobStore store = SqliteJobStore.Open(args[0]);
    JobDesk desk = new(store, TimeProvider.System, new RandomIdSource());
    JobId job = new(args[1]);
    int count = int.Parse(args[4], CultureInfo.InvariantCulture);
    for (int i = 0; i < count; i++)
    {
        int last;
        if (args[2] == "import")
        {
            last = JobArchive.ImportFrom(store, args[3]).NewEntries;
        }
        else
        {
            JobEvent[] events = args[2] == "looks"
                ? [.. args[3].Split(',').Select(pad => new JobEvent.PadStateSeen(new PadId(pad), i % 2 == 0 ? PadState.Loose : PadState.Sound, null))]
                : [Touch(new PadId(args[3]), i)];
            RecordOutcome outcome = desk.RecordAll(job, events);
            if (outcome is not RecordOutcome.Recorded recorded)
            {
                await Console.Error.WriteLineAsync(outcome.ToString()).ConfigureAwait(false);
                return 1;
            }

            last = recorded.Entry.Number;
        }

        Console.WriteLine(last.ToString(CultureInfo.InvariantCulture));
        await Console.Out.FlushAsync().ConfigureAwait(false);
    }

    return 0;
}
catch (JobStoreException problem)
{
    await Console.Error.WriteLineAsync(problem.Message).ConfigureAwait(false);
    return 4;
}

static JobEvent Touch(PadId pad, int seconds) => new JobEvent.ExposureLogged(
    new Exposure(
        TouchPurpose.Wick,
        [new ToolSetting.Iron(null, Temperature.FromDegreesCelsius(350))],
        TimeProvider.System.GetUtcNow(),
        Duration.FromSeconds(seconds),
        [new HeatedPad(pad, true, true, null)]),
    null);
