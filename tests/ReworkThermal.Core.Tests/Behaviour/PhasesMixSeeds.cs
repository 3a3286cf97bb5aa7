using FsCheck;
using FsCheck.Fluent;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>Numbers of random mixes, spread wider than FsCheck's small integers.</summary>
public static class PhasesMixSeeds
{
    public static Arbitrary<int> Seeds() => Gen.Choose(0, 1_000_000).ToArbitrary();
}
