using ReworkThermal.Data;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Tests.Behaviour;

/// <summary>Data of the user's own folder: stands in, is added, is marked, and is complained about by its full path.</summary>
public sealed class OwnDataTests
{
    private const string Alloy = """
        name = "Bi58Sn42"
        composition = "Bi57Sn43"
        family = "bismuth-tin"
        forms = ["wire"]
        lead_free = true
        cautions = []

        [melting]
        solidus = "139 C"
        liquidus = "140 C"
        source = "OwnLabel"
        mark = "seen"
        """;

    [Fact]
    public void An_own_thermodynamic_system_stands_in_and_marks_every_answer_that_rests_on_it()
    {
        using TemporaryFolder own = WithSystem("pb-sn.toml", ("known_deviations = [", "known_deviations = [\n  \"own\","), ("constant = 5368.0", "constant = 5400.0"));
        BenchResult leaded = Run(own, "melt", "Sn63Pb37");
        Assert.True(leaded.Code == 0, leaded.Error);
        Assert.Contains("pb-sn.toml (yours) stands in for the shipped file", leaded.Out, StringComparison.Ordinal);
        Assert.Matches(@"Pb-Sn\s+rests\s+on\s+a\s+system\s+of\s+your\s+own\s+folder", leaded.Out);
        Assert.NotEqual(
            Bench.Run("melt", "Sn63Pb37", "--json").Json().GetProperty("solidus_c").GetDouble(),
            Run(own, "melt", "Sn63Pb37", "--json").Json().GetProperty("solidus_c").GetDouble());
        Assert.DoesNotMatch(@"rests\s+on\s+a\s+system", Run(own, "melt", "Sn96.5Ag3.5").Out);
        Assert.Matches(
            @"rests\s+on\s+a\s+system",
            Run(own, "dilute", "--joint", "jack-anchor-six-layer", "--with", "Sn63Pb37", "--ratio", "0.3").Out);
        Assert.Contains("pb-sn.toml (yours)", Run(own, "clean", "--joint", "jack-anchor-six-layer", "--with", "Sn63Pb37", "--refill", "Sn96.5Ag3Cu0.5").Out, StringComparison.Ordinal);

        BenchResult check = Run(own, "data", "check");
        Assert.Equal(1, check.Code);
        Assert.Matches(@"drift\s+of\s+program\s+or\s+data", check.Out);
    }

    [Fact]
    public void An_own_system_that_states_fitting_lattice_values_is_accepted() =>
        Assert.Equal(0, RunWithLattice("5510.0, T = -8.46").Code);

    // 4150 - 5.2 T is the lattice value of tin that other assessments used (Au-Sn of 2007).
    [Fact]
    public void An_own_system_with_other_lattice_values_is_refused_with_file_line_and_field()
    {
        BenchResult result = RunWithLattice("4150.0, T = -5.2");
        Assert.Equal(3, result.Code);
        Assert.Matches(@"pb-sn\.toml, line \d+, .*plus", result.Error);
        Assert.Contains("lattice value of Sn in FCC_A1 differs by", result.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unary.toml")]
    [InlineData("phases.toml")]
    [InlineData("model.toml")]
    public void What_all_systems_share_cannot_be_replaced(string name)
    {
        using TemporaryFolder own = WithSystem(name);
        BenchResult result = Run(own, "melt", "Sn63Pb37");
        Assert.Equal(3, result.Code);
        Assert.Contains(name, result.Error, StringComparison.Ordinal);
        Assert.Contains("all systems share it", result.Error, StringComparison.Ordinal);
    }

    private static BenchResult RunWithLattice(string terms)
    {
        string statement = $"[[end_member]]\nphase = \"FCC_A1\"\nelements = [\"Sn\"]\nshares = {{ \"Sn solid\" = 1 }}\nplus = [{{ constant = {terms} }}]\nsource = \"NgaiChang1981\"\nmark = \"second-hand\"\n\n[[invariant]]";
        using TemporaryFolder own = WithSystem("pb-sn.toml", ("[[invariant]]", statement));
        return Run(own, "melt", "Sn63Pb37");
    }

    private static TemporaryFolder WithSystem(string file, params (string Old, string New)[] changes)
    {
        TemporaryFolder own = new();
        string text = File.ReadAllText(Path.Combine(DataRoot.BesideProgram.Alloys, "thermodynamics", file));
        own.Write("alloys/thermodynamics/" + file, changes.Aggregate(text, (t, c) => t.Replace(c.Old, c.New, StringComparison.Ordinal)));
        return own;
    }

    [Fact]
    public void An_own_alloy_stands_in_for_the_shipped_one_and_is_marked()
    {
        using TemporaryFolder own = WithAlloy("bi58sn42.toml", Alloy);
        BenchResult result = Run(own, "melt", "Bi58Sn42");

        Assert.True(result.Code == 0, result.Error);
        Assert.Contains("Bi57Sn43", result.Out, StringComparison.Ordinal);
        Assert.Contains("Your own data in force", result.Out, StringComparison.Ordinal);
        Assert.Contains("bi58sn42.toml (yours) stands in for the shipped file", result.Out, StringComparison.Ordinal);
        Assert.Contains("stands in", Run(own, "melt", "Bi58Sn42", "--json").Json().GetProperty("own_data")[0].GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("yours", Bench.Run("melt", "Bi58Sn42").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void An_own_alloy_is_added()
    {
        using TemporaryFolder own = WithAlloy("shop-wire.toml", Alloy.Replace("Bi58Sn42", "ShopWire", StringComparison.Ordinal));
        BenchResult result = Run(own, "melt", "ShopWire");

        Assert.True(result.Code == 0, result.Error);
        Assert.Contains("(yours) is added", result.Out, StringComparison.Ordinal);
        Assert.Equal(0, Run(own, "data", "check").Code);
    }

    [Fact]
    public void A_mistake_in_an_own_file_is_named_by_its_full_path()
    {
        using TemporaryFolder own = WithAlloy("shop-wire.toml", Alloy.Replace("Bi57Sn43", "Bi57Cd43", StringComparison.Ordinal));
        BenchResult result = Run(own, "melt", "Bi57Cd43");

        Assert.Equal(2, result.Code);
        Assert.Contains(Path.Combine(own.Path, "alloys", "dilution", "shop-wire.toml"), result.Error, StringComparison.Ordinal);
        Assert.Contains("cadmium", result.Error, StringComparison.Ordinal);
        Assert.Equal(3, Run(own, "data", "check").Code);
    }

    [Fact]
    public void An_own_board_stands_in()
    {
        using TemporaryFolder own = new();
        string shipped = Path.Combine(DataRoot.BesideProgram.Profiles, "boards", "six-layer-controller.toml");
        own.Write("profiles/boards/six-layer-controller.toml", File.ReadAllText(shipped));
        BenchResult result = Run(own, "dilute", "--joint", "jack-anchor-six-layer", "--with", "Bi58Sn42", "--ratio", "0.3");

        Assert.True(result.Code == 0, result.Error);
        Assert.Contains("six-layer-controller.toml (yours) stands in", result.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_broken_own_board_does_not_stop_a_plan_for_another()
    {
        using TemporaryFolder own = new();
        string broken = own.Write("profiles/boards/broken.toml", "name = [");
        BenchResult result = Run(own, "plan", Bench.DemoRequest);

        Assert.True(result.Code == 0, result.Error);
        Assert.Contains(broken, result.Error, StringComparison.Ordinal);
    }

    // XDG Base Directory Specification 0.8: a relative path in the variable is to be ignored.
    [Theory]
    [InlineData(StorePlatform.Unix, "/config", "/home/u", "/config/rework-thermal")]
    [InlineData(StorePlatform.Unix, "config", "/home/u", "/home/u/.config/rework-thermal")]
    [InlineData(StorePlatform.Unix, null, "/home/u", "/home/u/.config/rework-thermal")]
    [InlineData(StorePlatform.MacOS, null, "/home/u", "/home/u/Library/Application Support/ReworkThermal")]
    [InlineData(StorePlatform.Unix, null, null, null)]
    public void The_own_folder_has_its_place(StorePlatform platform, string? config, string? home, string? expected) =>
        Assert.Equal(expected, OwnFolder.For(platform, name => name == "HOME" ? home : name == "XDG_CONFIG_HOME" ? config : null));

    private static TemporaryFolder WithAlloy(string file, string text)
    {
        TemporaryFolder own = new();
        own.Write("alloys/dilution/" + file, text);
        own.Write("alloys/sources.toml", "[OwnLabel]\ncitation = \"label of the reel\"\n");
        return own;
    }

    private static BenchResult Run(TemporaryFolder own, params string[] words) =>
        Bench.Run(new DataRoot(DataRoot.BesideProgram.Folder, own.Path), words);
}
