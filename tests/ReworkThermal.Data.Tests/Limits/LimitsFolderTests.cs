using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Data.Limits;

namespace ReworkThermal.Data.Tests.Limits;

/// <summary>Reading the shipped limits, and what is said when a file is not in order.</summary>
public sealed class LimitsFolderTests : IDisposable
{
    private readonly ShippedCopy _copy = new();

    public void Dispose() => _copy.Dispose();

    [Fact]
    public void Shipped_files_are_in_order()
    {
        DamageLimits limits = LimitsFolder.Load(DataRoot.BesideProgram);
        Assert.Equal(["A", "B", "B-required", "C", "unknown"], limits.Laminates.Select(l => l.Name));
        Assert.Equal(["sound", "touched", "scorched"], limits.Priors.Select(p => p.Name));
        Assert.Equal([5, 6, 9], limits.Parameters.MeltCounts.Select(c => c.Count));
        RatedEstimate<UnitsNet.MolarEnergy> energy = limits.Parameters.Laminate.ActivationEnergy;
        Assert.Equal((100, 150, 200), (energy.Low.KilojoulesPerMole, energy.Central.KilojoulesPerMole, energy.High.KilojoulesPerMole));
        Assert.Equal(SupportLevel.SupportedInForm, energy.Support);
        Assert.Equal(EvidenceMark.Computed, energy.Estimate.Provenance.Mark);
    }

    [Fact]
    public void Unknown_names_are_not_found()
    {
        DamageLimits limits = LimitsFolder.Load(DataRoot.BesideProgram);
        Assert.Null(limits.LaminateOrNull("a"));
        Assert.Null(limits.PriorOrNull("dropped"));
    }

    [Theory]
    [InlineData("laminate-classes.toml", "value = \"10 min\"", "value = \"10 minutes\"", "class[1].t260.value", "must be a duration")]
    [InlineData("laminate-classes.toml", "low = \"6.25 min\"", "low = \"11 min\"", "class[1].t260.value", "must lie between low and high")]
    [InlineData("laminate-classes.toml", "low = \"6.25 min\"", "low = \"-6.25 min\"", "class[1].t260.low", "must be at least")]
    [InlineData("laminate-classes.toml", "source = \"LaminateTable4101C\"", "source = \"Hearsay\"", "class[1].t260.source", "not in sources.toml")]
    [InlineData("laminate-classes.toml", "mark = \"seen\"", "mark = \"sean\"", "class[1].t260.mark", "must be one of")]
    [InlineData("laminate-classes.toml", "support = \"supported\"", "support = \"proven\"", "class[1].t260.support", "must be one of supported, supported in form, judgement")]
    [InlineData("laminate-classes.toml", "name = \"B\"", "name = \"A\"", "class[2].name", "used by an earlier class")]
    [InlineData("laminate-classes.toml", "t260_is_lower_bound = false", "t260_is_lower_bound = \"no\"", "class[1].t260_is_lower_bound", "must be true or false")]
    [InlineData("laminate-classes.toml", "description = \"standard FR-4, Tg about 135 C\"", "descriptions = \"x\"", "class[1].description", "is missing")]
    [InlineData("damage.toml", "value = 0.08", "value = 8.0", "adhesion.loss_per_melt.value", "must lie between 0 and 1")]
    [InlineData("damage.toml", "value = 0.08", "value = nan", "adhesion.loss_per_melt.value", "must be a finite number")]
    [InlineData("damage.toml", "value = \"150 kJ/mol\"", "value = \"150 eV\"", "laminate.activation_energy.value", "must be a molar energy")]
    [InlineData("damage.toml", "count = 6", "count = 5", "melt_count[2].count", "must be above the count before it")]
    [InlineData("damage.toml", "[pull.free]", "[pull.freely]", "pull.free", "is missing")]
    [InlineData("damage.toml", "start_temperature = \"25 C\"", "start_temperature = \"25 C\"\nextra = 1", "barrel.extra", "is not a field")]
    [InlineData("prior-heat.toml", "time = \"45 s\", melts = true, region = \"board\"", "time = \"45 s\", melts = true, region = \"everywhere\"", "prior[1].at_least[1].region", "must be one of local, board")]
    [InlineData("prior-heat.toml", "temperature = \"240 C\", time", "temperature = \"2400 C\", time", "prior[1].at_least[1].temperature", "must be at most")]
    [InlineData("prior-heat.toml", "name = \"touched\"", "name = \"sound\"", "prior[2].name", "used by an earlier entry")]
    public void A_fault_is_named_with_file_line_and_field(string file, string good, string bad, string field, string rule)
    {
        _copy.Spoil("profiles/limits/" + file, good, bad);
        DataFileProblem problem = Assert.Single(Assert.Throws<DataFileException>(() => LimitsFolder.Load(_copy.Data)).Problems);
        Assert.Equal(_copy["profiles/limits/" + file], problem.File);
        Assert.Equal(field, problem.Field);
        Assert.Contains(rule, problem.Rule, StringComparison.Ordinal);
        Assert.True(problem.Line > 0);
    }

    [Fact]
    public void The_line_is_that_of_the_fault()
    {
        string path = _copy["profiles/limits/damage.toml"];
        string[] lines = File.ReadAllLines(path);
        int line = Array.IndexOf(lines, "value = 0.08");
        lines[line] = "value = \"0.08\"";
        File.WriteAllLines(path, lines);
        DataFileException fault = Assert.Throws<DataFileException>(() => LimitsFolder.Load(_copy.Data));
        Assert.Equal(line + 1, fault.Problems[0].Line);
    }

    [Fact]
    public void A_missing_file_is_named()
    {
        string path = _copy["profiles/limits/prior-heat.toml"];
        File.Delete(path);
        DataFileException fault = Assert.Throws<DataFileException>(() => LimitsFolder.Load(_copy.Data));
        Assert.Equal(path, fault.Problems[0].File);
        Assert.Contains("no such file", fault.Problems[0].Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_not_TOML_is_named_with_its_line()
    {
        string path = _copy["profiles/limits/damage.toml"];
        File.AppendAllText(path, "\n[broken\n");
        DataFileException fault = Assert.Throws<DataFileException>(() => LimitsFolder.Load(_copy.Data));
        Assert.Contains(fault.Problems, p => p.File == path && p.Line > 200 && p.Rule.StartsWith("not valid TOML", StringComparison.Ordinal));
    }
}
