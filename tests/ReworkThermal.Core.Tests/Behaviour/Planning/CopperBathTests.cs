using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Tests.Published;

namespace ReworkThermal.Core.Tests.Behaviour.Planning;

/// <summary>The copper that molten solder can hold, as histories of touches use it.</summary>
public sealed class CopperBathTests
{
    [Fact]
    public void It_is_known_from_where_the_solder_flows_up_to_the_hottest_iron()
    {
        double hottest = PlanDemo.Workshop.Profiles.Irons.Values.Max(i => i.MostSetting.DegreesCelsius);
        MeltingBehaviour melting = PhasesData.Melt(PhasesData.TinLead);
        TabulatedSolubility? known = CopperBath.Solubility(PhasesData.Engine, PhasesData.TinLead, melting.Flow);

        Assert.NotNull(known);
        Assert.True(known.Covers(melting.Flow.DegreesCelsius));
        Assert.True(known.Covers(hottest), $"not known at {hottest} °C");
    }
}
