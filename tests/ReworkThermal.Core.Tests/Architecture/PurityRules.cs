using ArchUnitNET.Domain.Dependencies;

namespace ReworkThermal.Core.Tests.Architecture;

/// <summary>The model computes: it touches no file, console, clock, environment or hidden randomness.</summary>
public sealed class PurityRules
{
    private static readonly string[] _forbiddenTypes =
    [
        "System.IO.", "System.Console", "System.Environment", "System.AppContext", "System.Net.", "System.Diagnostics.Process",
        "System.Diagnostics.Stopwatch", "System.Threading.Timer", "Microsoft.Win32.",
    ];

    private static readonly string[] _forbiddenMembers =
    [
        "System.DateTime::get_Now(", "System.DateTime::get_UtcNow(", "System.DateTime::get_Today(",
        "System.DateTimeOffset::get_Now(", "System.DateTimeOffset::get_UtcNow(",
        "System.TimeProvider::get_System(", "System.Guid::NewGuid(", "System.Guid::CreateVersion7(",
        "System.Random::.ctor()", "System.Random::get_Shared(", "System.Security.Cryptography.RandomNumberGenerator::",
        "MathNet.Numerics.Random.RandomSeed::", "MathNet.Numerics.Random.SystemRandomSource::get_Default(",
        "MathNet.Numerics.Random.SystemRandomSource::.ctor()", "MathNet.Numerics.Random.MersenneTwister::.ctor()",
    ];

    [Fact]
    public void The_model_uses_no_type_of_the_outside_world()
    {
        IEnumerable<string> uses = CoreAssembly.Uses
            .Where(u => _forbiddenTypes.Any(f => u.Target.FullName.StartsWith(f, StringComparison.Ordinal)))
            .Select(u => $"{u.Origin.FullName} uses {u.Target.FullName}")
            .Distinct();
        Assert.Empty(uses);
    }

    [Fact]
    public void The_model_asks_no_clock_and_draws_no_unseeded_random_number()
    {
        IEnumerable<string> calls = CoreAssembly.Uses
            .OfType<IMemberTypeDependency>()
            .Select(u => (From: u.Origin.FullName, Called: CalledName(u)))
            .Where(u => _forbiddenMembers.Any(f => u.Called.Contains(f, StringComparison.Ordinal)))
            .Select(u => $"{u.From} calls {u.Called}")
            .Distinct();
        Assert.Empty(calls);
    }

    [Fact]
    public void The_rule_sees_calls_out_of_the_model()
    {
        // Guards against a rule that sees nothing: the designation reader is known to call Math.Abs.
        Assert.Contains(CoreAssembly.Uses.OfType<IMemberTypeDependency>(), u => CalledName(u).Contains("System.Math::Abs(", StringComparison.Ordinal));
    }

    private static string CalledName(IMemberTypeDependency use) => use is MethodCallDependency call ? call.TargetMember.FullName : string.Empty;
}
