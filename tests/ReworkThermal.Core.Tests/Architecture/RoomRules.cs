namespace ReworkThermal.Core.Tests.Architecture;

/// <summary>Dependencies between the rooms of the model point one way. The table is the one in DEVELOPERS.md.</summary>
public sealed class RoomRules
{
    /// <summary>Rooms that any room may use.</summary>
    private static readonly string[] _leafRooms = ["Evidence", "Numerics"];

    /// <summary>Each room with the rooms it may use besides itself and the leaf rooms.</summary>
    private static readonly Dictionary<string, string[]> _mayUse = new()
    {
        ["Evidence"] = [],
        ["Numerics"] = [],
        ["Composition"] = [],
        ["Phases"] = ["Composition"],
        ["Boards"] = ["Composition"],
        ["Mixing"] = ["Composition", "Phases", "Boards"],
        ["HeatFlow"] = ["Boards"],
        ["Tools"] = ["Boards", "HeatFlow"],
        ["Damage"] = ["Composition", "Phases", "HeatFlow"],
        ["Jobs"] = ["Boards", "Tools", "Damage", "HeatFlow"],
        ["Planning"] = ["Composition", "Phases", "Boards", "Mixing", "HeatFlow", "Tools", "Damage", "Jobs"],
        ["Verification"] = ["Composition", "Phases", "Boards", "Mixing", "HeatFlow", "Tools", "Damage", "Jobs"],
        ["Reports"] = ["Composition", "Phases", "Boards", "Mixing", "HeatFlow", "Tools", "Damage", "Jobs", "Planning", "Verification"],
    };

    [Fact]
    public void Every_type_lives_in_a_room_of_the_table()
    {
        IEnumerable<string> strays = CoreAssembly.Types
            .Where(t => !t.IsCompilerGenerated && !_mayUse.ContainsKey(CoreAssembly.RoomOf(t)))
            .Select(t => t.FullName);
        Assert.Empty(strays);
    }

    [Fact]
    public void Rooms_use_only_what_the_table_allows()
    {
        Assert.Empty(Violations((from, to) => _mayUse.TryGetValue(from, out string[]? allowed) && allowed.Concat(_leafRooms).Contains(to)));
    }

    [Fact]
    public void The_rule_reads_method_bodies_and_signatures()
    {
        // Guards against a rule that sees nothing: with no use allowed at all, known uses must turn up.
        Assert.NotEmpty(Violations((_, _) => false));
    }

    [Theory]
    [InlineData("Damage")]
    [InlineData("Jobs")]
    public void A_room_that_judges_or_keeps_histories_knows_nothing_else_of_heat_flow(string room)
    {
        IEnumerable<string> others = CoreAssembly.Uses
            .Where(u => CoreAssembly.RoomOf(u.Origin) == room && CoreAssembly.RoomOf(u.Target) == "HeatFlow")
            .Select(u => u.Target.FullName)
            .Where(name => name != "ReworkThermal.Core.HeatFlow.TemperatureHistory")
            .Distinct();
        Assert.Empty(others);
    }

    [Fact]
    public void No_namespace_bears_the_name_of_a_type_inside_it()
    {
        IEnumerable<string> clashes = CoreAssembly.Types
            .Where(t => t.Namespace.FullName.Split('.').Contains(t.Name))
            .Select(t => t.FullName);
        Assert.Empty(clashes);
    }

    private static IEnumerable<string> Violations(Func<string, string, bool> isAllowed) => CoreAssembly.Uses
        .Select(use => (Use: use, From: CoreAssembly.RoomOf(use.Origin), To: CoreAssembly.RoomOf(use.Target)))
        .Where(u => u.From.Length > 0 && u.To.Length > 0 && u.From != u.To && !isAllowed(u.From, u.To))
        .Select(u => $"{u.From} must not use {u.To}: {u.Use.Origin.FullName} uses {u.Use.Target.FullName}")
        .Distinct();
}
