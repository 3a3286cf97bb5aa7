using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class MeltCommandTests
{
    [Fact]
    public void The_JSON_answer_holds_every_promised_field()
    {
        BenchResult result = Bench.Run("melt", "Sn63Pb37", "--json");
        Assert.Equal(0, result.Code);
        JsonElement json = result.Json();
        foreach (string field in new[] { "solidus_c", "liquidus_c", "flow_c", "scheil_end_c", "liquid_fraction_at_100c", "latent_heat_kj_per_kg", "density_kg_per_m3", "uncertainty_k" })
        {
            Assert.Equal(JsonValueKind.Number, json.GetProperty(field).ValueKind);
        }

        Assert.True(json.GetProperty("converged").GetBoolean());
        Assert.NotEmpty(json.GetProperty("phases").EnumerateArray());
        Assert.NotEmpty(json.GetProperty("sources").EnumerateArray());
        double sum = json.GetProperty("mass_fractions").EnumerateObject().Sum(f => f.Value.GetDouble());
        Assert.Equal(1, sum, 5);
    }

    [Fact]
    public void Text_and_JSON_tell_the_same_flow_temperature()
    {
        double flow = Bench.Run("melt", "SnAg3Cu0.5", "--json").Json().GetProperty("flow_c").GetDouble();
        string text = Bench.Run("melt", "SnAg3Cu0.5").Out;
        Assert.Contains(flow.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture) + " °C", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Xx10Sn90", "'Xx' is not an element this program models")]
    [InlineData("Sn60Pb30", "add up to 90, not 100")]
    [InlineData("Cd50Sn50", "cadmium is toxic")]
    [InlineData("Sn91Al9", "aluminium is not modelled")]
    [InlineData("Sn-5Pb105", "is not a composition")]
    [InlineData("SnNaN", "'Na' is not an element")]
    [InlineData("NaN", "not an element")]
    [InlineData("", "no composition was given")]
    [InlineData("Sn98Ni2", "at most 1 %")]
    [InlineData("Sn60Sn40", "named twice")]
    [InlineData("Sn96,5Ag3,5", "decimal point")]
    public void A_composition_that_cannot_be_used_is_refused_in_one_sentence(string composition, string because)
    {
        BenchResult result = Bench.Run("melt", composition);
        Assert.Equal(2, result.Code);
        Assert.Empty(result.Out);
        Assert.Single(result.Error.TrimEnd('\n').Split('\n'));
        Assert.Contains(because, result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_composition_is_a_usage_mistake()
    {
        BenchResult result = Bench.Run("melt");
        Assert.Equal(2, result.Code);
        Assert.Contains("melt --help", result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Gold_with_lead_prints_the_solidus_alone()
    {
        JsonElement json = Bench.Run("melt", "Sn61.1Pb35.9Au3", "--json").Json();
        Assert.Equal(178.3, json.GetProperty("solidus_c").GetDouble(), 0.1);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("liquidus_c").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("flow_c").ValueKind);
        Assert.Contains("only the start of melting", json.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain("liquidus  ", Bench.Run("melt", "Sn61.1Pb35.9Au3").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Bi50Pb28Sn22", @"one\s+arrest\s+of\s+a\s+heating\s+curve:\s+the\s+joint\s+moves\s+only\s+at\s+109")]
    [InlineData("Bi46Sn34Pb20", @"moves\s+only\s+at\s+13[45]")]
    [InlineData("Bi56Sn30In14", @"moves\s+only\s+at\s+110")]
    [InlineData("Sn99.25Cu0.7Ni0.05", @"not\s+checked\s+against\s+the\s+text")]
    public void What_tables_print_stands_beside_what_is_computed(string alloy, string sentence) =>
        Assert.Matches(sentence, Bench.Run("melt", alloy).Out);

    [Fact]
    public void The_curve_rises_from_all_solid_to_all_liquid()
    {
        JsonElement json = Bench.Run("melt", "Sn63Pb37", "--curve", "--json").Json();
        double[] liquid = [.. json.GetProperty("liquid_fraction").EnumerateArray().Select(v => v.GetDouble())];
        double[] celsius = [.. json.GetProperty("temperature_c").EnumerateArray().Select(v => v.GetDouble())];
        Assert.Equal(0, liquid[0]);
        Assert.Equal(1, liquid[^1]);
        Assert.Equal(liquid.Order(), liquid);
        Assert.Equal(celsius.Order(), celsius);
        Assert.Equal(liquid.Length, json.GetProperty("phases").GetArrayLength());
    }

    [Fact]
    public void The_curve_can_be_written_as_CSV_and_drawn_as_SVG_and_PNG()
    {
        using TemporaryFolder folder = new();
        string csv = Path.Combine(folder.Path, "curve.csv");
        string svg = Path.Combine(folder.Path, "curve.svg");
        string png = Path.Combine(folder.Path, "curve.png");
        Assert.Equal(0, Bench.Run("melt", "Sn63Pb37", "--csv", csv, "--plot", svg).Code);
        Assert.Equal(0, Bench.Run("melt", "Sn63Pb37", "--plot", png).Code);
        Assert.StartsWith("temperature_c,liquid_fraction,enthalpy_kj_per_kg,phases\n", File.ReadAllText(csv), StringComparison.Ordinal);
        Assert.Contains("<svg", File.ReadAllText(svg), StringComparison.Ordinal);
        Assert.Equal(0x89, File.ReadAllBytes(png)[0]);
        Assert.Equal(3, Directory.GetFiles(folder.Path).Length);
    }

    [Theory]
    [InlineData("curve.gif", "ends in .svg or .png")]
    [InlineData("no/such/folder/curve.svg", "cannot be written")]
    public void A_picture_that_cannot_be_written_is_a_usage_mistake(string name, string because)
    {
        using TemporaryFolder folder = new();
        BenchResult result = Bench.Run("melt", "Sn63Pb37", "--plot", Path.Combine(folder.Path, name));
        Assert.Equal(2, result.Code);
        Assert.Contains(because, result.Error, StringComparison.Ordinal);
    }
}
