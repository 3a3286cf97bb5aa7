using System.Text.Json;
using ReworkThermal.Data;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class HeatCommandTests
{
    private static string JointCase => File.ReadAllText(Path.Combine(DataRoot.BesideProgram.Profiles, "cases", "jack-anchor-one-touch.toml"));

    private static string SlabCase => File.ReadAllText(Path.Combine(DataRoot.BesideProgram.Profiles, "cases", "slab-dipped.toml"));

    [Fact]
    public void The_JSON_answer_holds_every_promised_field()
    {
        BenchResult result = Run(JointCase);
        Assert.Equal(0, result.Code);
        JsonElement json = result.Json();
        int samples = json.GetProperty("time_s").GetArrayLength();
        Assert.True(samples > 2);
        Assert.NotEmpty(json.GetProperty("probes").EnumerateObject());
        Assert.All(json.GetProperty("probes").EnumerateObject(), p => Assert.Equal(samples, p.Value.GetArrayLength()));
        Assert.True(json.TryGetProperty("time_to_flow_s", out _));
        Assert.InRange(json.GetProperty("energy_balance_error").GetDouble(), -0.001, 0.001);
    }

    [Theory]
    [InlineData("setting = \"350 C\"", "setting = \"900 C\"", "900 °C", "touch[1].iron.setting")]
    [InlineData("start = \"23 C\"", "start = 23", "must be a temperature", "start")]
    [InlineData("end = \"20 s\"", "end = \"nan s\"", "must be a duration", "end")]
    [InlineData("end = \"20 s\"", "end = \"4 s\"", "before the end of the last touch", "end")]
    [InlineData("solder = \"Sn96.5Ag3Cu0.5\"", "solder = \"Cd50Sn50\"", "cadmium is toxic", "solder")]
    [InlineData("solder = \"Sn96.5Ag3Cu0.5\"", "solder = \"Sn90Ag3Cu0.5\"", "not 100", "solder")]
    [InlineData("board = \"six-layer-controller\"", "board = \"two-layer-sensor\"", "one connection per copper layer", "joint")]
    [InlineData("board = \"six-layer-controller\"", "board = \"no-such-board\"", "must be one of", "board")]
    [InlineData("share = \"40 %\"", "share = \"-4 %\"", "must be at least", "added.share")]
    [InlineData("kind = \"joint\"", "kind = \"joint\"\nsolderr = \"x\"", "is not a field of this table", "solderr")]
    [InlineData("span = \"8 s\"", "span = \"8 s", "not valid TOML", "line")]
    public void A_case_that_cannot_be_used_is_refused_with_file_line_and_field(string was, string becomes, string because, string field)
    {
        Run(JointCase.Replace(was, becomes, StringComparison.Ordinal)).MustBeRefused(3, "case.toml, line ", field, because);
    }

    [Fact]
    public void An_iron_behind_a_surface_pad_is_refused()
    {
        Run(JointCase.Replace("jack-anchor-six-layer", "terminal-pad-six-layer", StringComparison.Ordinal)).MustBeRefused(3, "touch[1].side: puts an iron on the bottom");
    }

    [Fact]
    public void The_answer_states_the_error_of_its_mesh_unless_it_is_not_wanted()
    {
        JsonElement stated = Run(JointCase).Json().GetProperty("mesh");
        Assert.InRange(stated.GetProperty("error_estimate_k").GetDouble(), 0.001, 3);
        JsonElement single = Run(JointCase.Replace("[added]", "[solver]\nestimate_mesh_error = false\n\n[added]", StringComparison.Ordinal)).Json().GetProperty("mesh");
        Assert.Equal(JsonValueKind.Null, single.GetProperty("error_estimate_k").ValueKind);
        Assert.True(single.GetProperty("radial_cells").GetInt32() < stated.GetProperty("radial_cells").GetInt32());
    }

    [Theory]
    [InlineData("height = \"2 mm\"\n\n", "height = \"-2 mm\"\n\n", "must be at least")]
    [InlineData("density = \"1000 kg/m3\"", "density = \"0 kg/m3\"", "must be at least")]
    [InlineData("material = \"slab\"", "material = \"gold\"", "must be one of")]
    [InlineData("condition = \"convection\"", "condition = \"wishing\"", "must be one of")]
    public void A_posed_problem_that_cannot_be_is_refused(string was, string becomes, string because)
    {
        Run(SlabCase.Replace(was, becomes, StringComparison.Ordinal)).MustBeRefused(3, "case.toml", because);
    }

    [Fact]
    public void Blocks_that_do_not_fill_the_body_are_refused()
    {
        Run(SlabCase.Replace("top = \"2 mm\"", "top = \"1 mm\"", StringComparison.Ordinal)).MustBeRefused(3, "case.toml");
    }

    [Fact]
    public void A_missing_file_is_bad_data()
    {
        Bench.Run("heat", "no-such-case.toml").MustBeRefused(3, "no-such-case.toml: there is no such file");
    }

    [Fact]
    public void The_run_can_be_written_as_CSV_and_drawn()
    {
        using TemporaryFolder folder = new();
        string csv = Path.Combine(folder.Path, "run.csv");
        string svg = Path.Combine(folder.Path, "run.svg");
        string path = folder.Write("case.toml", SlabCase);
        Assert.Equal(0, Bench.Run("heat", path, "--csv", csv, "--plot", svg).Code);
        Assert.StartsWith("time_s,insulated_face_c,wetted_face_c\n", File.ReadAllText(csv), StringComparison.Ordinal);
        Assert.Contains("insulated face", File.ReadAllText(svg), StringComparison.Ordinal);
    }

    private static BenchResult Run(string text)
    {
        using TemporaryFolder folder = new();
        return Bench.Run("heat", folder.Write("case.toml", text), "--json");
    }
}
