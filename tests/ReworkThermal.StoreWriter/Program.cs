// A second process for the fault tests of the job store: logs touches and prints the number of every one the store has confirmed.
// Arguments: store file, job, pad, how many touches. Exit 0: all written; 4: the store refused, its message on standard error.
using System.Globalization;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;
using UnitsNet;

try
{
    using SqliteJobStore store = SqliteJobStore.Open(args[0]);
    JobDesk desk = new(store, TimeProvider.System, new RandomIdSource());
    JobId job = new(args[1]);
    PadId pad = new(args[2]);
    int count = int.Parse(args[3], CultureInfo.InvariantCulture);
    for (int i = 0; i < count; i++)
    {
        Exposure touch = new(
            TouchPurpose.Wick,
            [new ToolSetting.Iron(null, Temperature.FromDegreesCelsius(350))],
            TimeProvider.System.GetUtcNow(),
            Duration.FromSeconds(i),
            [new HeatedPad(pad, true, true, null)]);
        RecordOutcome outcome = desk.Record(job, new JobEvent.ExposureLogged(touch, null));
        if (outcome is not RecordOutcome.Recorded recorded)
        {
            await Console.Error.WriteLineAsync(outcome.ToString()).ConfigureAwait(false);
            return 1;
        }

        Console.WriteLine(recorded.Entry.Number.ToString(CultureInfo.InvariantCulture));
        await Console.Out.FlushAsync().ConfigureAwait(false);
    }

    return 0;
}
catch (JobStoreException problem)
{
    await Console.Error.WriteLineAsync(problem.Message).ConfigureAwait(false);
    return 4;
}
