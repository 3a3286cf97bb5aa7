using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

public sealed class JobStoreContractSqlite : JobStoreContract, IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    protected override IJobStore Create() => SqliteJobStore.Open(_folder["sub/jobs.db"]);
}
