using ReworkThermal.Core.Jobs.Pins;

namespace ReworkThermal.Core.Jobs.Checking;

/// <summary>
/// Every check a register needs, each once. Built, not chosen, so that it is complete: one continuity check for every pin that is
/// connected to something, one isolation check for every pair of neighbours that do not belong together, one check against ground
/// for every pin that does not belong to ground. It is minimal: neighbours that belong together are left out (each proves its own
/// way to the common place), and so is the check against ground for a pin with a ground pin beside it, since the pair says it.
/// </summary>
public static class CheckList
{
    /// <summary>Builds the list.</summary>
    /// <param name="register">The pins.</param>
    /// <returns>Checks with what to expect, pin by pin: first its continuity, then ground, then later neighbours.</returns>
    public static IReadOnlyList<(ElectricalCheck Check, ExpectedReading Expected)> For(PinRegister register)
    {
        ArgumentNullException.ThrowIfNull(register);
        HashSet<PadId> besideGround = [];
        Dictionary<PadId, List<PadId>> laterNeighbours = [];
        foreach ((Pin first, Pin second) in register.NeighbourPairs)
        {
            if (Net(first) == Net(second) && first.Duty is not PinDuty.NoConnect)
            {
                continue;
            }

            if (!laterNeighbours.TryGetValue(first.Number, out List<PadId>? later))
            {
                laterNeighbours[first.Number] = later = [];
            }

            later.Add(second.Number);
            Mark(besideGround, first, second);
        }

        List<(ElectricalCheck Check, ExpectedReading Expected)> list = [];
        ExpectedReading.Open open = new();
        foreach (Pin pin in register.Pins)
        {
            if (Continuity(pin) is { } expected)
            {
                list.Add((new ElectricalCheck.Continuity(pin.Number), expected));
            }

            if (!IsGround(pin) && !besideGround.Contains(pin.Number))
            {
                list.Add((new ElectricalCheck.GroundIsolation(pin.Number), open));
            }

            foreach (PadId neighbour in laterNeighbours.GetValueOrDefault(pin.Number) ?? [])
            {
                list.Add((new ElectricalCheck.Isolation(pin.Number, neighbour), open));
            }
        }

        return list;
    }

    private static void Mark(HashSet<PadId> besideGround, Pin first, Pin second)
    {
        if (IsGround(second))
        {
            besideGround.Add(first.Number);
        }

        if (IsGround(first))
        {
            besideGround.Add(second.Number);
        }
    }

    private static bool IsGround(Pin pin) => pin.Duty is PinDuty.Ground or PinDuty.Shield { Bond: ShieldBond.Grounded };

    private static ExpectedReading.Conducts? Continuity(Pin pin) => pin.Duty switch
    {
        PinDuty.Wired wired => new ExpectedReading.Conducts(wired.Destination, ReferencePoint.Destination),
        PinDuty.Ground or PinDuty.Shield { Bond: ShieldBond.Grounded } => new ExpectedReading.Conducts(null, ReferencePoint.Ground),
        PinDuty.Shield => new ExpectedReading.Conducts(null, ReferencePoint.Shell),
        _ => null,
    };

    private static (ReferencePoint? Kind, string? Place) Net(Pin pin) =>
        Continuity(pin) is { } place ? (place.Kind, place.Place) : (null, null);
}
