namespace ReworkThermal.Core.Damage;

/// <summary>What a pad can hold now, at its temperature, whatever its history left of it.</summary>
/// <param name="BondN">Force that the bond of the pad holds against prying [N].</param>
/// <param name="BarrelN">Force that the barrel holds [N]; zero for a surface pad.</param>
/// <param name="CapacityN">Both together, widened at the ends by one standard deviation of pull tests [N].</param>
/// <param name="Margins">Against each way of pulling, gentlest first.</param>
/// <param name="Verdict">Whether the part may be lifted.</param>
/// <param name="Support">Weakest support among the figures that enter.</param>
public sealed record PullCheck(
    Spread BondN,
    Spread BarrelN,
    Spread CapacityN,
    IReadOnlyList<PullMargin> Margins,
    PullVerdict Verdict,
    SupportLevel Support);
