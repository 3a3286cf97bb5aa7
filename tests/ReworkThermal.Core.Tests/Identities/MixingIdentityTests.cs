using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>Conservation of mass when solders are mixed, drained and refilled. Tolerances are near rounding.</summary>
public class MixingIdentityTests
{
    private const double Rounding = 1e-12;

    public static Arbitrary<SolderCharge> Charges()
    {
        Gen<double[]> masses = Gen.Choose(0, 1000).Select(n => n / 10.0).ArrayOf(ElementData.Count).Where(a => a.Sum() > 0);
        return Arb.From(
            from parts in masses
            from milligrams in Gen.Choose(1, 100_000)
            select new SolderCharge(Mass.FromMilligrams(milligrams / 100.0), MassFractions.FromMasses(parts)));
    }

    [Property(Arbitrary = [typeof(MixingIdentityTests)])]
    public bool A_mix_sums_to_one_and_lies_between_its_parents(SolderCharge a, SolderCharge b)
    {
        MassFractions mix = a.With(b).Fractions;
        return Math.Abs(mix.ToArray().Sum() - 1) < Rounding
            && ElementData.All.All(e => mix[e] >= Math.Min(a.Fractions[e], b.Fractions[e]) - Rounding
                && mix[e] <= Math.Max(a.Fractions[e], b.Fractions[e]) + Rounding);
    }

    [Property(Arbitrary = [typeof(MixingIdentityTests)])]
    public bool Mixing_is_associative_and_commutative(SolderCharge a, SolderCharge b, SolderCharge c) =>
        Same(a.With(b).With(c), a.With(b.With(c))) && Same(a.With(b), b.With(a));

    [Property(Arbitrary = [typeof(MixingIdentityTests)])]
    public bool Adding_nothing_changes_nothing(SolderCharge a, SolderCharge b) =>
        Same(a.With(b with { Amount = Mass.Zero }), a);

    [Property(Arbitrary = [typeof(MixingIdentityTests)])]
    public bool Amount_for_share_gives_that_share(SolderCharge a, SolderCharge b, byte percent)
    {
        Ratio share = Ratio.FromPercent(percent % 100);
        Mass added = a.AmountForShare(share);
        SolderCharge mix = a.With(b with { Amount = added });
        return Math.Abs((added / mix.Amount) - share.DecimalFractions) < Rounding;
    }

    [Property(Arbitrary = [typeof(MixingIdentityTests)])]
    public bool Removal_keeps_the_composition(SolderCharge a, byte percent)
    {
        SolderCharge residue = a.Without(Ratio.FromPercent(percent % 101));
        return residue.Fractions.Equals(a.Fractions)
            && Math.Abs((residue.Amount / a.Amount) - (1 - ((percent % 101) / 100.0))) < Rounding;
    }

    private static bool Same(SolderCharge a, SolderCharge b) =>
        Math.Abs((a.Amount / b.Amount) - 1) < Rounding
        && ElementData.All.All(e => Math.Abs(a.Fractions[e] - b.Fractions[e]) < Rounding);
}
