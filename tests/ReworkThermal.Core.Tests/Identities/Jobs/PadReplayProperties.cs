using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Pads;

namespace ReworkThermal.Core.Tests.Identities.Jobs;

/// <summary>Laws of a pad's budget over random jobs.</summary>
public sealed class PadReplayProperties
{
    private static readonly PadReplay _replay = new(JobBenches.New());

    private static Gen<List<Exposure>> Touches =>
        from count in Gen.Choose(1, 6)
        from temperatures in Gen.Choose(150, 320).ArrayOf(count)
        from tenths in Gen.Choose(0, 120).ArrayOf(count)
        select temperatures.Zip(tenths, (c, s) => (c, s)).Select((t, i) => JobBenches.Steady(t.c, t.s / 10.0, i * 5)).ToList();

    [Property(MaxTest = 40)]
    public Property The_budget_never_falls_as_touches_are_added() => Prop.ForAll(Touches.ToArbitrary(), touches =>
    {
        Spread previous = Share([]);
        for (int i = 1; i <= touches.Count; i++)
        {
            Spread now = Share(touches.Take(i));
            Assert.True(now.Low >= previous.Low && now.Central >= previous.Central && now.High >= previous.High);
            previous = now;
        }
    });

    [Property(MaxTest = 40)]
    public Property A_void_takes_back_exactly_what_its_touch_had_added() => Prop.ForAll(Touches.ToArbitrary(), touches =>
    {
        JobState voided = JobBenches.State(touches, voided: touches.Count + 2);
        Assert.Equal(Share(touches.Take(touches.Count - 1)), Judge(voided.Pads[JobBenches.Pad]).Budget.Share);
    });

    // With full cooling between the touches and the same solder throughout, only the rounding of the sums may differ.
    [Property(MaxTest = 40)]
    public Property The_order_of_separate_touches_does_not_matter_to_laminate_adhesion_barrel_and_melts() => Prop.ForAll(Touches.ToArbitrary(), touches =>
    {
        HeatBudget forward = Judge(JobBenches.Ledger(touches)).Budget;
        HeatBudget backward = Judge(JobBenches.Ledger(touches.Select((t, i) => t with { StartedAt = JobBenches.Start.AddMinutes(500 - (i * 5)) }))).Budget;
        foreach (GaugeKind kind in Enum.GetValues<GaugeKind>().Where(k => k != GaugeKind.Copper))
        {
            Assert.Equal(forward.GaugeOrNull(kind)!.Share.Central, backward.GaugeOrNull(kind)!.Share.Central, 1e-12);
        }
    });

    [Property(MaxTest = 20)]
    public Property A_touch_of_no_time_costs_nothing() => Prop.ForAll(Gen.Choose(20, 400).ToArbitrary(), celsius =>
        Assert.Equal(Share([]), Share([JobBenches.Steady(celsius, 0, 0)])));

    private static PadAccount Judge(PadLedger ledger) => _replay.Of(ledger, JobBenches.Site, JobBenches.LeadFree);

    private static Spread Share(IEnumerable<Exposure> touches) => Judge(JobBenches.Ledger(touches)).Budget.Share;
}
