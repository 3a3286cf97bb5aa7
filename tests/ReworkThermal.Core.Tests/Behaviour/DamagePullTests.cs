using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Tests.Published;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>What a pad can hold now.</summary>
public sealed class DamagePullTests
{
    [Fact]
    public void One_joint_below_its_flow_temperature_forbids_pulling()
    {
        PullCheck check = Check(DamageBench.Hole(), 245, [Joint("1", 230), Joint("2", 214), Joint("3", 190)]);
        PullVerdict.DoNotPull verdict = Assert.IsType<PullVerdict.DoNotPull>(check.Verdict);
        Assert.Equal(["2", "3"], verdict.Joints);
        Assert.Contains("3 by 27 K", verdict.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void No_known_joint_forbids_pulling() =>
        Assert.IsType<PullVerdict.DoNotPull>(Check(DamageBench.Hole(), 245, []).Verdict);

    [Fact]
    public void A_sound_barrel_holds_a_nudge_when_every_joint_flows()
    {
        PullCheck check = Check(DamageBench.Hole(), 245, [Joint("1", 230)]);
        Assert.Equal(PullDemand.Nudged, Assert.IsType<PullVerdict.MayLift>(check.Verdict).Hardest);
        Assert.Equal(SupportLevel.Judgement, check.Support);
        Assert.Equal(PullOutcome.Doubtful, check.Margins.Single(m => m.Demand == PullDemand.Pried).Outcome);
    }

    [Fact]
    public void A_hot_surface_pad_gets_no_leave_to_be_forced()
    {
        PullCheck check = Check(DamageBench.Land(), 245, [Joint("1", 230)]);
        Assert.IsType<PullVerdict.LiftWithoutForce>(check.Verdict);
        Assert.Equal(default, check.BarrelN);
        Assert.Equal(PullOutcome.Tears, check.Margins.Single(m => m.Demand == PullDemand.Pried).Outcome);
    }

    /// <summary>Below Tg nearly all of the bond is back.</summary>
    [Fact]
    public void Cooling_below_the_glass_transition_restores_the_bond()
    {
        double hot = Check(DamageBench.Land(), 245, []).BondN.Central;
        double cool = Check(DamageBench.Land(), 100, []).BondN.Central;
        Assert.InRange(hot / cool, 0.14, 0.16);
    }

    [Fact]
    public void Low_profile_foil_holds_less()
    {
        PadGeometry low = new PadGeometry.Surface(Length.FromMillimeters(2), HeatFlowBench.Exactly(Length.FromMicrometers(35)), FoilProfile.LowProfile);
        Assert.Equal(0.6 / 1.42, Check(low, 100, []).BondN.Central / Check(DamageBench.Land(), 100, []).BondN.Central, 1e-9);
    }

    private static PullCheck Check(PadGeometry pad, double celsius, IReadOnlyList<JointHeat> joints)
    {
        DamageModel model = DamageBench.Model("B", pad);
        return PullChecker.Check(model, model.Begin(DamageBench.Prior("sound")), DamageBench.Celsius(celsius), joints);
    }

    private static JointHeat Joint(string name, double celsius) => new(name, DamageBench.Celsius(celsius), DamageBench.Celsius(217));
}
