using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Phases;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Thermodynamics;

namespace ReworkThermal.Data.Tests.Alloys;

public sealed class AlloyShelfTests
{
    private static readonly AlloyShelf _shelf = AlloyShelf.Load(DataRoot.BesideProgram);

    [Fact]
    public void The_shelf_holds_the_alloys_that_are_met_on_boards()
    {
        Assert.True(_shelf.Solders.Count >= 40);
        Assert.True(_shelf.Dilutions.Count >= 25);
        Assert.All(_shelf.Solders.Concat(_shelf.Dilutions), a => Assert.NotNull(_shelf.Sources.Cite(a.Melting.Provenance.Source)));
        Assert.Contains(_shelf.Solders, a => a.Melting.Provenance.Mark == EvidenceMark.Memory);
        Assert.Equal(12, _shelf.UsualDilutions.Count);
    }

    /// <summary>Every listed alloy is answered, or its limit is named.</summary>
    [Fact]
    public void Every_listed_alloy_is_answered()
    {
        PhaseEngine engine = new(ThermodynamicFiles.Load(DataRoot.BesideProgram));
        Assert.All(_shelf.Solders.Concat(_shelf.Dilutions), a => Assert.IsType<MeltingOutcome.Found>(engine.MeltingOf(a.Fractions)));
    }

    [Theory]
    [InlineData("Sn95Sb5")]
    [InlineData("Sn97Cu3")]
    [InlineData("Sn99.25Cu0.7Ni0.05")]
    [InlineData("Sn93.5Bi3Ag3Cu0.5")]
    [InlineData("Pb92.5Sn5Ag2.5")]
    [InlineData("Sn91Zn9")]
    public void A_designation_finds_its_listed_alloy(string designation)
    {
        DesignationReading.Accepted reading = Assert.IsType<DesignationReading.Accepted>(AlloyDesignation.Read(designation));
        Assert.Contains(_shelf.Listed(reading.Fractions), a => a.Name == designation);
    }
}
