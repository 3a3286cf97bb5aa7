using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Phases.Parameters;
using ReworkThermal.Data.Thermodynamics;

namespace ReworkThermal.Data.Tests.Thermodynamics;

public sealed class ThermodynamicFilesTests : IDisposable
{
    private static readonly string _shipped = Path.Combine(DataRoot.BesideProgram.Alloys, "thermodynamics");

    private readonly ShippedCopy _copy = new();

    private string Folder => _copy["alloys/thermodynamics"];

    public void Dispose() => _copy.Dispose();

    [Fact]
    public void Load_OfShippedFiles_KnowsEveryPairOfElements()
    {
        ThermodynamicDatabase database = ThermodynamicFiles.Load(_shipped);
        foreach (Element a in ElementData.All)
        {
            foreach (Element b in ElementData.All.Where(b => b > a))
            {
                Assert.Single(database.Systems, s => s.Elements.Count == 2 && s.Elements.Contains(a) && s.Elements.Contains(b));
            }
        }
    }

    [Fact]
    public void Load_OfShippedFiles_StatesWhatIsFittedRememberedOrMissing()
    {
        ThermodynamicDatabase database = ThermodynamicFiles.Load(_shipped);
        Assert.Equal(
            ["Ag-Au", "Ag-In", "Ag-Zn", "Au-Bi", "Au-Cu", "Au-In", "Au-Pb", "Au-Sb", "Au-Zn", "Cu-In", "Cu-Sb", "Cu-Zn", "In-Sb", "In-Zn", "Pb-Zn", "Sb-Zn"],
            Titles(database, SystemStatus.Missing));
        Assert.Equal(["Bi-In", "Bi-In-Sn", "Bi-Zn", "In-Pb", "In-Pb-Sn", "In-Sn", "Pb-Sb"], Titles(database, SystemStatus.Fitted));
        Assert.Equal(["Bi-Sb"], Titles(database, SystemStatus.Memory));
        Assert.All(database.Systems, s => Assert.True(s.ValidRange.Length > 0));
        Assert.All(database.Systems.Where(s => s.Status != SystemStatus.Assessed), s => Assert.NotNull(s.Caveat));
    }

    [Fact]
    public void Recompute_AfterAParameterChanged_ReportsTheDrift()
    {
        _copy.Spoil("alloys/thermodynamics/pb-sn.toml", "constant = 5368.0", "constant = 5468.0");
        InvariantComparison row = InvariantChecks.Recompute(ThermodynamicFiles.Load(Folder)).Single(r => r.System.Title == "Pb-Sn");
        Assert.False(row.Unchanged);
    }

    // The lattice stability of tin in the face-centred cubic phase: with 4150 - 5.2 T the eutectic is at 181.4 °C, with the assessed value
    // at 182.2-182.3 °C (both computed elsewhere with an independent solver from the same parameters).
    [Fact]
    public void Recompute_WithTheWrongLatticeStability_MovesTheTinLeadEutectic()
    {
        _copy.Spoil("alloys/thermodynamics/unary.toml", "plus = [{ constant = 5510.0, T = -8.46 }]\nsource = \"NgaiChang1981\"", "plus = [{ constant = 4150.0, T = -5.2 }]\nsource = \"NgaiChang1981\"");
        InvariantComparison row = InvariantChecks.Recompute(ThermodynamicFiles.Load(Folder)).Single(r => r.System.Title == "Pb-Sn");
        Assert.Equal(181.4, row.ComputedCelsius!.Value, 0.1);
    }

    // Without the term, (Pb) dissolves copper: solidus of Sn-3Ag-0.5Cu with 10 % Sn-37Pb 184.5 °C instead of 176.5 °C (computed elsewhere
    // with an independent solver from the same parameters).
    [Theory]
    [InlineData("45684.0, T = 5.151", 176.5)]
    [InlineData("0.0", 184.5)]
    public void Melting_OfLeadContaminatedSolder_NeedsCopperBarredFromLead(string term, double solidus)
    {
        _copy.Spoil("alloys/thermodynamics/cu-pb.toml", "constant = 45684.0, T = 5.151", $"constant = {term}");
        PhaseEngine engine = new(ThermodynamicFiles.Load(Folder));
        MassFractions alloy = MassFractions.Of((Element.Sn, 93.15), (Element.Pb, 3.7), (Element.Ag, 2.7), (Element.Cu, 0.45));
        Assert.Equal(solidus, Assert.IsType<MeltingOutcome.Found>(engine.MeltingOf(alloy)).Behaviour.Solidus.DegreesCelsius, 0.3);
    }

    [Theory]
    [InlineData("pb-sn.toml", "units = \"J/mol\"", "units = \"kJ/mol\"", "units", "J/mol")]
    [InlineData("pb-sn.toml", "source = \"Fecht1989\"", "source = \"Nobody\"", "source", "not in sources.toml")]
    [InlineData("pb-sn.toml", "phase = \"LIQUID\"", "phase = \"GAS\"", "phase", "not a phase")]
    [InlineData("pb-sn.toml", "elements = [\"Pb\", \"Sn\"]", "elements = [\"Pb\", \"Xx\"]", "elements", "not one of the modelled elements")]
    [InlineData("pb-sn.toml", "constant = 5368.0", "constnat = 5368.0", "constnat", "is not a field")]
    [InlineData("pb-sn.toml", "constant = 5368.0", "constant = nan", "constant", "finite")]
    [InlineData("pb-sn.toml", "published = \"183 °C\"", "published = \"183\"", "published", "temperature")]
    [InlineData("ag-in.toml", "above = { Ag = \"0.5 %\"", "above = { Sn = \"0.5 %\"", "Sn", "not an element of this system")]
    [InlineData("ag-in.toml", "answer = \"none\"", "answer = \"some\"", "answer", "must be one of")]
    [InlineData("in-pb.toml", "status = \"fitted\"", "status = \"guessed\"", "status", "must be one of")]
    [InlineData("ag-sn.toml", "elements = [\"Ag\", \"Sn\"]\nplus", "elements = [\"Sn\", \"Ag\"]\nplus", "elements", "constituent")]
    [InlineData("unary.toml", "shares = { \"Ag liquid\" = 1 }", "shares = { \"Ag vapour\" = 1 }", "Ag vapour", "not a function")]
    [InlineData("phases.toml", "liquid = true", "liquid = false", "phase", "exactly one")]
    public void Load_OfAFileWithAnError_NamesFileLineAndField(string file, string right, string wrong, string field, string rule)
    {
        _copy.Spoil("alloys/thermodynamics/" + file, right, wrong);
        DataFileException problem = Assert.Throws<DataFileException>(() => ThermodynamicFiles.Load(Folder));
        DataFileProblem first = problem.Problems[0];
        Assert.EndsWith(file, first.File, StringComparison.Ordinal);
        Assert.True(first.Line > 0 || file == "phases.toml");
        Assert.Contains(field, first.Field, StringComparison.Ordinal);
        Assert.Contains(rule, first.Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void Load_OfAnInteractionGivenTwice_IsRefused()
    {
        File.Copy(Path.Combine(Folder, "pb-sn.toml"), Path.Combine(Folder, "sn-pb.toml"));
        DataFileException problem = Assert.Throws<DataFileException>(() => ThermodynamicFiles.Load(Folder));
        Assert.Contains("given twice", problem.Problems[0].Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void Load_OfAMissingFile_SaysWhichOne()
    {
        File.Delete(Path.Combine(Folder, "unary.toml"));
        DataFileException problem = Assert.Throws<DataFileException>(() => ThermodynamicFiles.Load(Folder));
        Assert.Contains("unary.toml", problem.Problems[0].File, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Titles(ThermodynamicDatabase database, SystemStatus status) =>
        database.Systems.Where(s => s.Status == status).Select(s => s.Title).Order(StringComparer.Ordinal);
}
