using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using UnitsNet;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Behaviour;

public class DilutionSearchTests(ITestOutputHelper output)
{
    private static readonly SolderCharge _joint = new(Mass.FromMilligrams(12), Shelf.Read("Sn96.5Ag3Cu0.5"));

    [Fact]
    public void Every_choice_reaches_the_target_and_a_little_less_alloy_does_not()
    {
        DilutionRanking ranking = Rank(180, leadFreeOnly: false);
        Assert.NotEmpty(ranking.Choices);
        foreach (DilutionChoice choice in ranking.Choices)
        {
            output.WriteLine(FormattableString.Invariant($"{choice.Alloy.Name,-18} {choice.Share.Percent,5:0.0} % {choice.Added.Milligrams,6:0.0} mg flow {choice.Melting.Flow.DegreesCelsius,6:0.0} Scheil end {choice.Freezing.End.DegreesCelsius,6:0.0}"));
            Assert.True(choice.Melting.Flow.DegreesCelsius <= 180);
            Ratio less = choice.Share - Ratio.FromPercent(0.3);
            MeltingOutcome.Found fewer = Assert.IsType<MeltingOutcome.Found>(Shelf.Engine.MeltingOf(_joint.Fractions.MixedWith(choice.Alloy.Fractions, less.DecimalFractions)));
            Assert.True(fewer.Behaviour.Flow.DegreesCelsius > 180);
        }

        output.WriteLine(string.Join(Environment.NewLine, ranking.Excluded));
    }

    [Fact]
    public void The_least_added_mass_comes_first()
    {
        DilutionRanking ranking = Rank(180, leadFreeOnly: false);
        Assert.Equal(ranking.Choices.OrderBy(c => c.Added.Kilograms), ranking.Choices);
    }

    [Fact]
    public void Lead_free_only_leaves_lead_out_and_says_so()
    {
        DilutionRanking ranking = Rank(180, leadFreeOnly: true);
        Assert.All(ranking.Choices, c => Assert.True(c.Alloy.IsLeadFree));
        Assert.Contains(ranking.Excluded, e => e.Name == "Sn63Pb37" && e.Reason.Contains("lead", StringComparison.Ordinal));
    }

    [Fact]
    public void An_alloy_that_cannot_reach_the_target_says_how_far_it_gets()
    {
        DilutionRanking ranking = Rank(150, leadFreeOnly: false);
        ExcludedAlloy tinLead = Assert.Single(ranking.Excluded, e => e.Name == "Sn63Pb37");
        Assert.Contains("the lowest flow temperature is", tinLead.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Bismuth_on_a_leaded_joint_warns_of_the_low_eutectic() =>
        Assert.Contains(MixHazards.Of(Shelf.Read("Sn63Pb37"), Shelf.Read("Bi58Sn42")), h => h.Contains("96", StringComparison.Ordinal));

    private static DilutionRanking Rank(double celsius, bool leadFreeOnly) => new DilutionSearch(Shelf.Engine).Rank(
        new DilutionQuestion(_joint, Shelf.Alloys.Dilutions, Temperature.FromDegreesCelsius(celsius), leadFreeOnly, Ratio.FromPercent(60)));
}
