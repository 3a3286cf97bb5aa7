using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class WireCommandTests
{
    /// <summary>AWG 30 solid copper: 338.6 mohm/m at 20 °C (wire table, ASTM B258 dimensions); 14 mm are 4.74 mohm. Tolerance 1 % of the table.</summary>
    [Fact]
    public void A_signal_wire_is_fit_and_has_the_resistance_of_the_wire_table()
    {
        BenchResult result = Bench.Run("wire", "judge", "--awg", "30", "--length", "14", "--current", "0.02", "--kind", "ptfe", "--crosses-copper", "--json");
        Assert.Equal(0, result.Code);
        Assert.InRange(result.Json().GetProperty("resistance_at_20c_ohm").GetDouble(), 0.00474 * 0.99, 0.00474 * 1.01);
        Assert.Equal("fit", result.Json().GetProperty("fitness").GetString());
    }

    [Fact]
    public void A_thin_wire_for_a_power_pin_is_not_fit_and_the_answer_is_no()
    {
        BenchResult result = Bench.Run("wire", "judge", "--awg", "36", "--length", "40", "--current", "3", "--supply", "5", "--kind", "bare-tinned", "--crosses-copper", "--json");
        Assert.Equal(1, result.Code);
        Assert.Contains("a bare wire must not cross bare copper", result.Json().GetProperty("concerns").EnumerateArray().Select(c => c.GetString()));
    }

    /// <summary>By hand: 2 mm at the speed of light 299.792458 mm/ns take 6.671 ps; at 480 Mbit/s a bit lasts 2083.3 ps.</summary>
    [Fact]
    public void A_pair_has_the_skew_of_its_mismatch()
    {
        JsonElement pair = Bench.Run("wire", "pair", "--awg", "30", "--first", "20", "--second", "22", "--bit-rate", "480", "--kind", "ptfe", "--spacing", "0.6", "--json").Json();
        Assert.Equal(6.671, pair.GetProperty("skew_low_ps").GetDouble(), 0.001);
        Assert.Equal(2083.333, pair.GetProperty("bit_time_ps").GetDouble(), 0.001);
        Assert.True(pair.GetProperty("impedance_high_ohm").GetDouble() > pair.GetProperty("impedance_low_ohm").GetDouble());
    }

    [Fact]
    public void A_wire_is_recorded_with_the_touches_of_its_two_ends()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Must("job", "pad", "test pad", "--pad", "TP4", "--joint", "wire-landing-pad-six-layer");
        bench.Must("wire", "run", "12", "TP4", "--awg", "30", "--length", "14", "--kind", "ptfe", "--pair", "P0");
        bench.Touch("TP4", 210, 2, more: []);
        JsonElement wire = bench.Json("wire", "list").GetProperty("wires")[0];
        Assert.Equal("ptfe", wire.GetProperty("insulation").GetString());
        Assert.Equal(0, wire.GetProperty("touches_logged").GetInt32());
        bench.Must("touch", "log", "--pad", "TP4", "--purpose", "wire", "--seconds", "2", "--iron", "fine", "--iron-set", "300");
        Assert.Equal(1, bench.Json("wire", "list").GetProperty("wires")[0].GetProperty("touches_logged").GetInt32());

        // A landing pad has no barrel, and its small mass heats fast.
        JsonElement pad = bench.Json("budget", "show", "--pad", "TP4");
        Assert.DoesNotContain("barrel", pad.GetProperty("gauges").EnumerateArray().Select(g => g.GetProperty("gauge").GetString()));
        Assert.True(pad.GetProperty("peak_c").GetDouble() > 200);
    }

    [Fact]
    public void Settings_for_the_end_of_a_wire_flow_in_time_and_spare_the_pad()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Must("job", "pad", "test pad", "--pad", "TP4", "--joint", "wire-landing-pad-six-layer");
        JsonElement[] touches = [.. bench.Json("wire", "plan", "--pad", "TP4").GetProperty("touches").EnumerateArray()];
        Assert.NotEmpty(touches);
        double previous = 0;
        foreach (JsonElement touch in touches)
        {
            Assert.InRange(touch.GetProperty("dwell_s").GetDouble(), touch.GetProperty("time_to_flow_s").GetDouble() + 1 - 1e-6, 5);
            Assert.True(touch.GetProperty("pad_peak_c").GetDouble() <= 320);
            double cost = touch.GetProperty("added_laminate_share").GetProperty("central").GetDouble();
            Assert.True(cost >= previous);
            previous = cost;
        }

        // A pin tied to two planes by spokes flows within a wire's touch too, at a hot setting (practice: 2 to 6 s at 350 to 370 °C).
        Assert.Equal(0, bench.Run("wire", "plan", "--pad", "12").Code);
    }

    [Theory]
    [InlineData("wire", "judge", "--awg", "30", "--length", "14", "--current", "1", "--kind", "golden")]
    [InlineData("wire", "judge", "--awg", "60", "--length", "14", "--current", "1", "--kind", "ptfe")]
    [InlineData("wire", "pair", "--awg", "30", "--first", "0", "--second", "0", "--bit-rate", "480", "--kind", "ptfe")]
    [InlineData("wire", "pair", "--awg", "30", "--first", "5", "--second", "5", "--bit-rate", "480", "--kind", "ptfe", "--spacing", "0.1")]
    public void What_cannot_be_judged_is_a_usage_mistake(params string[] words)
    {
        BenchResult result = Bench.Run(words);
        Assert.Equal(2, result.Code);
        Assert.Empty(result.Out);
    }
}
