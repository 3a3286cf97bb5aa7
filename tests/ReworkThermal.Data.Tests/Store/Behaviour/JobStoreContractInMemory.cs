using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

public sealed class JobStoreContractInMemory : JobStoreContract
{
    protected override IJobStore Create() => new InMemoryJobStore();
}
