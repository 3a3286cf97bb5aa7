using FsCheck;
using FsCheck.Fluent;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;

namespace ReworkThermal.Core.Tests.Identities.Jobs;

/// <summary>Random pin registers: some rows, gaps, staggered rows, shared destinations, all duties.</summary>
public static class RandomRegister
{
    private static readonly Gen<PinDuty> _duty = Gen.OneOf(
        Gen.Choose(1, 12).Select(n => (PinDuty)new PinDuty.Wired($"U1.{n}")),
        Gen.Choose(1, 40).Select(n => (PinDuty)new PinDuty.Wired($"U2.{n}")),
        Gen.Constant((PinDuty)new PinDuty.Ground()),
        Gen.Constant((PinDuty)new PinDuty.NoConnect()),
        Gen.Elements(ShieldBond.Grounded, ShieldBond.Separate).Select(b => (PinDuty)new PinDuty.Shield(b)));

    private static readonly Gen<(int Row, double Position, PinDuty Duty)> _place =
        from row in Gen.Choose(1, 5)
        from halves in Gen.Choose(0, 24)
        from duty in _duty
        select (row, halves / 2.0, duty);

    public static Arbitrary<PinRegister> Arbitrary() => Gen.Sized(size => _place.ListOf(1 + Math.Min(size, 60)))
        .Select(places => PinRegister.Of(places
            .DistinctBy(p => (p.Row, p.Position))
            .Select((p, i) => new Pin(new PadId($"P{i + 1}"), "n", p.Row, p.Position, p.Duty))))
        .ToArbitrary();
}
