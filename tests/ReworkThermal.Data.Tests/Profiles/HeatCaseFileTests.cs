using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Data.Cases;
using ReworkThermal.Data.Profiles;
using UnitsNet;
using Xunit;
using Xunit.Abstractions;

namespace ReworkThermal.Data.Tests.Profiles;

public sealed class HeatCaseFileTests(ITestOutputHelper output)
{
    private static readonly ProfileLibrary _library = ProfileLibrary.Load(DataRoot.BesideProgram);

    private const string Joint = """
        kind = "joint"
        board = "six-layer-controller"
        joint = "jack-anchor-six-layer"
        room = "still-air"
        superheat = "10 K"
        end = "20 s"
        [solder]
        designation = "Sn63Pb37"
        [[touch]]
        start = "0 s"
        span = "5 s"
        side = "bottom"
        iron = "medium"
        iron_set = "350 C"
        contact = "tinned"
        """;

    [Fact]
    public void The_shipped_textbook_case_gives_the_exact_answer()
    {
        HeatCase.Posed posed = Assert.IsType<HeatCase.Posed>(Shipped("slab-between-fluids.toml"));
        HeatRun run = Assert.IsType<HeatOutcome.Completed>(HeatSolver.Solve(posed.Problem, posed.Settings)).Run;

        // Holman, Example 4-6, exact series: 151.046 °C.
        Assert.Equal(151.046, run.Probes["middle"].At(60), 0.15);
    }

    [Fact]
    public void The_shipped_joint_case_runs_once_its_solder_is_known()
    {
        HeatCase.OnBoard joint = Assert.IsType<HeatCase.OnBoard>(Shipped("jack-anchor-touch.toml"));
        Assert.Equal("Sn96.5Ag3Cu0.5", Assert.IsType<SolderChoice.Designation>(joint.Solder).Text);
        HeatRun run = Assert.IsType<HeatOutcome.Completed>(HeatSolver.Solve(joint.With(LeadFree(), Temperature.FromDegreesCelsius(219)), joint.Settings)).Run;

        output.WriteLine($"{run.Flow} {run.Mesh} balance {run.Energy.BalanceError:e1}");
        foreach (NeighbourReport neighbour in run.Neighbours)
        {
            output.WriteLine($"{neighbour.Name} {neighbour.PeakCelsius:0} °C {string.Join("; ", neighbour.Warnings)}");
        }

        Assert.InRange(run.Energy.BalanceError, 0, 1e-3);
        Assert.Equal(3, run.Neighbours.Count);
    }

    [Fact]
    public void Solder_can_be_given_by_its_melting_points()
    {
        string text = Joint.Replace(
            "designation = \"Sn63Pb37\"",
            """
            solidus = "183 C"
            liquidus = "183 C"
            flow = "183 C"
            latent_heat = "46 kJ/kg"
            solid_heat = "180 J/kgK"
            liquid_heat = "200 J/kgK"
            density = "8400 kg/m3"
            solid_conductivity = "50 W/mK"
            liquid_conductivity = "25 W/mK"
            """,
            StringComparison.Ordinal);
        HeatCase.OnBoard joint = Assert.IsType<HeatCase.OnBoard>(HeatCaseFile.Parse(text, "case.toml", _library));
        SolderChoice.Given given = Assert.IsType<SolderChoice.Given>(joint.Solder);

        Assert.IsType<HeatOutcome.Completed>(HeatSolver.Solve(joint.With(given.Curve, given.Flow), joint.Settings));
    }

    [Theory]
    [InlineData("iron_set = \"350 C\"", "iron_set = \"900 C\"", "case.toml, line 14, touch[1].iron_set", "its range is 150 to 450 °C")]
    [InlineData("start = \"0 s\"", "start = \"-1 s\"", "case.toml, line 10, touch[1].start", "must be at least 0 s")]
    [InlineData("span = \"5 s\"", "span = \"50 s\"", "case.toml, line 11, touch[1].span", "past the end of the run")]
    [InlineData("superheat = \"10 K\"", "superheat = \"nan K\"", "case.toml, line 5, superheat", "a number and one of the units")]
    [InlineData("board = \"six-layer-controller\"", "board = \"two-layer-sensor\"", "case.toml, line 3, joint", "2 copper layer(s)")]
    [InlineData("iron = \"medium\"", "iron = \"enormous\"", "case.toml, line 13, touch[1].iron", "known: fine, heavy, medium")]
    [InlineData("contact = \"tinned\"", "contact = \"sticky\"", "case.toml, line 15, touch[1].contact", "must be one of bare, tinned, flooded")]
    [InlineData("contact = \"tinned\"", "contact = \"tinned\"\nwrong = 1", "case.toml, line 16, touch[1].wrong", "is not a field")]
    [InlineData("end = \"20 s\"", "end = \"20\"", "case.toml, line 6, end", "must be a duration")]
    [InlineData("end = \"20 s\"", "end = ", "case.toml, line 6", "")]
    public void A_bad_case_is_refused_with_place_and_rule(string good, string bad, string place, string rule)
    {
        string text = Joint.Replace(good, bad, StringComparison.Ordinal);

        DataFileException problem = Assert.Throws<DataFileException>(() => HeatCaseFile.Parse(text, "case.toml", _library));
        output.WriteLine(problem.Message);
        Assert.StartsWith(place, problem.Message, StringComparison.Ordinal);
        Assert.Contains(rule, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Overlapping_touches_are_refused()
    {
        string text = Joint + "\n[[touch]]\nstart = \"3 s\"\nspan = \"2 s\"\nside = \"bottom\"\niron = \"medium\"\niron_set = \"350 C\"\ncontact = \"tinned\"\n";

        DataFileException problem = Assert.Throws<DataFileException>(() => HeatCaseFile.Parse(text, "case.toml", _library));
        Assert.StartsWith("case.toml, line 17, touch[2].start: lies before the end of the touch before it", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_jet_outside_its_correlation_is_refused()
    {
        string text = Joint.Replace(
            "iron = \"medium\"\niron_set = \"350 C\"\ncontact = \"tinned\"",
            "nozzle = \"round-6\"\nair_set = \"350 C\"\nair_flow = \"60 L/min\"\nair_distance = \"5 mm\"",
            StringComparison.Ordinal);

        DataFileException problem = Assert.Throws<DataFileException>(() => HeatCaseFile.Parse(text, "case.toml", _library));
        Assert.StartsWith("case.toml, line 13, touch[1].nozzle: a distance of 0.83 nozzle diameters is outside the jet correlation", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_file_is_one_sentence()
    {
        DataFileException problem = Assert.Throws<DataFileException>(() => HeatCaseFile.Load("no-such-case.toml", _library));

        Assert.Equal("no-such-case.toml: there is no such file", problem.Message);
    }

    [Fact]
    public void A_posed_problem_with_a_hole_in_it_is_refused()
    {
        string text = File.ReadAllText(Path.Combine(DataRoot.BesideProgram.Profiles, "cases", "slab-between-fluids.toml"))
            .Replace("bottom = \"0 m\"", "bottom = \"0.01 m\"", StringComparison.Ordinal);

        DataFileException problem = Assert.Throws<DataFileException>(() => HeatCaseFile.Parse(text, "case.toml", _library));
        output.WriteLine(problem.Message);
        Assert.Contains("case.toml", problem.Message, StringComparison.Ordinal);
    }

    private static HeatCase Shipped(string name) => HeatCaseFile.Load(Path.Combine(DataRoot.BesideProgram.Profiles, "cases", name), _library);

    private static EnthalpyCurve LeadFree() => EnthalpyCurve.Melting(
        Temperature.FromDegreesCelsius(217),
        Temperature.FromDegreesCelsius(220),
        SpecificEnergy.FromKilojoulesPerKilogram(60),
        SpecificEntropy.FromJoulesPerKilogramKelvin(230),
        SpecificEntropy.FromJoulesPerKilogramKelvin(240),
        Density.FromKilogramsPerCubicMeter(7400),
        ThermalConductivity.FromWattsPerMeterKelvin(58),
        ThermalConductivity.FromWattsPerMeterKelvin(30));
}
