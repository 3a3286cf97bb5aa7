using FsCheck;
using FsCheck.Xunit;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Tests.Behaviour.Jobs;

namespace ReworkThermal.Core.Tests.Identities.Jobs;

/// <summary>The check list against its definition, written down a second time from the geometry and not from the list.</summary>
[Properties(Arbitrary = [typeof(RandomRegister)])]
public sealed class CheckListProperties
{
    [Property]
    public void Every_connected_pin_has_one_continuity_check_and_no_connects_have_none(PinRegister register)
    {
        List<PadId> checks = [.. Checks(register).OfType<ElectricalCheck.Continuity>().Select(c => c.Pin)];
        Assert.Equal(register.Pins.Where(p => p.Duty is not PinDuty.NoConnect).Select(p => p.Number).Order(), checks.Order());
    }

    [Property]
    public void Every_pair_of_neighbours_that_do_not_belong_together_is_there_once_and_no_other_pair(PinRegister register)
    {
        List<(PadId A, PadId B)> expected = [];
        for (int i = 0; i < register.Pins.Count; i++)
        {
            for (int j = i + 1; j < register.Pins.Count; j++)
            {
                Pin a = register.Pins[i];
                Pin b = register.Pins[j];
                if (AreNeighbours(register, a, b) && !BelongTogether(a, b))
                {
                    expected.Add(Ordered(a.Number, b.Number));
                }
            }
        }

        List<(PadId A, PadId B)> actual = [.. Checks(register).OfType<ElectricalCheck.Isolation>().Select(c => Ordered(c.First, c.Second))];
        Assert.Equal(expected.Order(), actual.Order());
        Assert.Equal(actual.Count, actual.Distinct().Count());
    }

    [Property]
    public void Every_pin_that_is_not_ground_is_checked_against_ground_once_by_itself_or_by_a_ground_neighbour(PinRegister register)
    {
        List<ElectricalCheck> checks = [.. Checks(register)];
        foreach (Pin pin in register.Pins)
        {
            int alone = checks.OfType<ElectricalCheck.GroundIsolation>().Count(c => c.Pin == pin.Number);
            int beside = checks.OfType<ElectricalCheck.Isolation>().Count(c =>
                c.Probed.Contains(pin.Number) && c.Probed.Any(p => p != pin.Number && IsGround(register.Find(p)!)));
            Assert.Equal(IsGround(pin) || beside > 0 ? 0 : 1, alone);
        }
    }

    [Property]
    public void No_check_stands_twice(PinRegister register)
    {
        List<ElectricalCheck> checks = [.. Checks(register)];
        Assert.Equal(checks.Count, checks.Distinct().Count());
    }

    [Property]
    public void A_single_bridge_or_break_anywhere_is_caught(PinRegister register)
    {
        // A break at any connected pin: its continuity check sees it. A bridge between any two neighbours that do not belong together:
        // the isolation check of that pair probes exactly these two.
        List<ElectricalCheck> checks = [.. Checks(register)];
        foreach ((Pin first, Pin second) in register.NeighbourPairs)
        {
            bool caught = checks.Contains(new ElectricalCheck.Isolation(first.Number, second.Number));
            Assert.Equal(!BelongTogether(first, second), caught);
        }
    }

    [Property]
    public void A_touch_makes_exactly_the_checks_of_its_pads_stale(PinRegister register, NonEmptyArray<PositiveInt> picks)
    {
        JobHistory history = JobHistory.WithPins(register.Pins);
        foreach (CheckLine line in history.State.Checks.Lines)
        {
            history.Add(new JobEvent.CheckDone(line.Check, CheckResult.Pass, null, null));
        }

        Assert.True(history.State.Checks.Lines.Count == 0 || history.State.Checks.Proven);
        HashSet<PadId> touched = [.. picks.Get.Take(3).Select(p => register.Pins[p.Get % register.Pins.Count].Number)];
        history.Add(JobHistory.Touch(5, [.. touched]));
        foreach (CheckLine line in history.State.Checks.Lines)
        {
            Assert.Equal(line.Check.Probed.Any(touched.Contains) ? CheckStanding.Stale : CheckStanding.Passed, line.Standing);
        }

        // Probing what the list asks for, one after the other, ends with everything proven and asks for nothing twice.
        HashSet<ElectricalCheck> asked = [];
        while (history.State.Checks.Upcoming is { } next)
        {
            Assert.True(asked.Add(next.Check));
            history.Add(new JobEvent.CheckDone(next.Check, CheckResult.Pass, null, null));
        }

        Assert.True(history.State.Checks.Lines.Count == 0 || history.State.Checks.Proven);
    }

    private static IEnumerable<ElectricalCheck> Checks(PinRegister register) => CheckList.For(register).Select(l => l.Check);

    private static bool AreNeighbours(PinRegister register, Pin a, Pin b) =>
        a.Row == b.Row
            ? !register.Pins.Any(p => p.Row == a.Row && p.Position > Math.Min(a.Position, b.Position) && p.Position < Math.Max(a.Position, b.Position))
            : Math.Abs(a.Row - b.Row) == 1 && Math.Abs(a.Position - b.Position) < 1;

    private static bool IsGround(Pin pin) => pin.Duty is PinDuty.Ground or PinDuty.Shield { Bond: ShieldBond.Grounded };

    private static bool BelongTogether(Pin a, Pin b) =>
        (IsGround(a) && IsGround(b))
        || (a.Duty is PinDuty.Wired x && b.Duty is PinDuty.Wired y && x.Destination == y.Destination)
        || (a.Duty is PinDuty.Shield { Bond: ShieldBond.Separate } && b.Duty is PinDuty.Shield { Bond: ShieldBond.Separate });

    private static (PadId A, PadId B) Ordered(PadId a, PadId b) => a.CompareTo(b) < 0 ? (a, b) : (b, a);
}
