using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.Tools;
using UnitsNet;
using Xunit.Abstractions;
using static ReworkThermal.Core.Tests.HeatFlowBench;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.Behaviour;

/// <summary>How the contact of a tip wets, and what braid between tip and joint does.</summary>
public sealed class HeatFlowContactTests(ITestOutputHelper output)
{
    /// <summary>h(t) = h_w - (h_w - h_0) exp(-t/tau): after one time constant 63.2 % of the way.</summary>
    [Theory]
    [InlineData(-1, 5000)]
    [InlineData(0, 5000)]
    [InlineData(2, 20803.014)]
    [InlineData(100, 30000)]
    public void A_contact_grows_as_its_formula_says(double seconds, double expected)
    {
        ContactGrowth tinned = new(Coefficient(5000), Coefficient(30000), Seconds(2), WaitsForMelt: false);
        Assert.Equal(expected, tinned.At(seconds), 0.01);
    }

    /// <summary>A tip that is wetted at once is never slower than one that grows to the same contact, nor one that stays as it began faster.</summary>
    [Fact]
    public void A_growing_contact_lies_between_its_ends()
    {
        double wetted = FlowsAfter(ContactGrowth.Steady(Coefficient(30000)));
        double growing = FlowsAfter(new ContactGrowth(Coefficient(5000), Coefficient(30000), Seconds(2), WaitsForMelt: false));
        double dry = FlowsAfter(new ContactGrowth(Coefficient(5000), Coefficient(30000), Seconds(2), WaitsForMelt: true));
        double spent = FlowsAfter(ContactGrowth.Steady(Coefficient(5000)));

        output.WriteLine($"wetted {wetted:0.00} s, growing {growing:0.00} s, dry until molten {dry:0.00} s, spent flux {spent:0.00} s");
        Assert.True(wetted < growing);
        Assert.True(growing < dry);
        Assert.True(dry < spent);
    }

    /// <summary>Energy balance and step control hold while the contact grows.</summary>
    [Fact]
    public void Heat_is_accounted_for_while_a_contact_grows()
    {
        TipSource tip = Tip() with { Contact = new ContactGrowth(Coefficient(2000), Coefficient(60000), Seconds(0.5), WaitsForMelt: true) };
        HeatRun run = Run(Problem(Board(1), Joint(1, FourSpokes()), tip, 10));
        Assert.InRange(Math.Abs(run.Energy.BalanceError), 0, 1e-6);
    }

    [Fact]
    public void Spent_flux_keeps_the_contact_at_its_start()
    {
        TipContact contact = new(ContactState.Tinned, Exactly(Coefficient(5000)), Exactly(Coefficient(30000)), Exactly(Seconds(2)), WaitsForMelt: false);
        Assert.Equal(30000, contact.Central().At(1000), 1e-6);
        Assert.Equal(5000, (contact with { Flux = FluxState.Spent }).Central().At(1000), 1e-6);
    }

    /// <summary>Braid is copper to be heated and a resistance on the way: it never lets a joint melt sooner.</summary>
    [Fact]
    public void Braid_holds_heat_back()
    {
        JointProblem bare = Problem(Board(1), Joint(1, FourSpokes()), Tip(380, contact: 20000, resistance: 1.5, heat: 1), 20);
        BraidLayer braid = new()
        {
            FromTip = Coefficient(20000),
            Width = Mm(2.5),
            ToJoint = new ContactGrowth(Coefficient(10000), Coefficient(20000), Seconds(0.5), WaitsForMelt: true),
            HeatCapacity = Entropy.FromJoulesPerKelvin(0.03),
            LossWattsPerKelvin = 0.004,
        };
        JointProblem through = bare with { Touches = [bare.Touches[0] with { Braid = braid }] };
        HeatRun without = Run(bare);
        HeatRun with = Run(through);

        output.WriteLine($"coldest solder after 10 s: {without.Probes[ProbeNames.ColdestSolder].At(10):0} °C bare, {with.Probes[ProbeNames.ColdestSolder].At(10):0} °C through braid");
        Assert.True(with.Probes[ProbeNames.ColdestSolder].At(10) < without.Probes[ProbeNames.ColdestSolder].At(10) - 5);
        Assert.InRange(Math.Abs(with.Energy.BalanceError), 0, 1e-6);
    }

    /// <summary>
    /// The rule from watts and width, beside the copper bodies that the shipped classes were made from: 2.5 mm x 10 mm, 5 mm x 15 mm,
    /// 8 mm x 25 mm.
    /// </summary>
    [Theory]
    [InlineData(1.2, 0.17)]
    [InlineData(2.4, 1.0)]
    [InlineData(5.0, 4.3)]
    public void A_tip_by_its_width_holds_about_as_much_heat_as_the_class(double widthMm, double joulePerKelvin)
    {
        Iron iron = IronClass.Of("by rule", Power.FromWatts(60), Mm(widthMm), TemperatureDelta.FromKelvins(20), Celsius(150), Celsius(450));
        Assert.InRange(joulePerKelvin, iron.TipHeatCapacity.Low.JoulesPerKelvin, iron.TipHeatCapacity.High.JoulesPerKelvin);
        SettingOutcome<TipSource> set = new IronSetting(iron, Celsius(350), new TipContact(ContactState.Tinned, Exactly(Coefficient(5000)), Exactly(Coefficient(30000)), Exactly(Seconds(2)), WaitsForMelt: false)).ToSource();
        Assert.Equal(330, Assert.IsType<SettingOutcome<TipSource>.Ready>(set).Source.Set.DegreesCelsius, 1e-9);
    }

    private static double FlowsAfter(ContactGrowth contact)
    {
        TipSource tip = Tip(380) with { Contact = contact };
        return Run(Problem(Board(0), Joint(0, FourSpokes()), tip, 60)).Flow!.SecondsToFlow!.Value;
    }
}
