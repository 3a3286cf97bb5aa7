using System.Runtime.Serialization;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Pulling;

/// <summary>What a pad can hold now, at its temperature, whatever its history left of it.</summary>
/// <param name="BondN">Force that the bond of the pad holds against prying [N].</param>
/// <param name="BarrelN">Force that the barrel holds [N]; zero for a surface pad.</param>
/// <param name="CapacityN">Both together, widened at the ends by one standard deviation of pull tests [N].</param>
/// <param name="Margins">Against each way of pulling, gentlest first.</param>
/// <param name="PressedEdge">Against a tip that presses the pad's edge.</param>
/// <param name="Verdict">Whether the part may be lifted.</param>
/// <param name="Support">Weakest support among the figures that enter.</param>
public sealed record PullCheck(
    Spread BondN,
    Spread BarrelN,
    Spread CapacityN,
    IReadOnlyList<PullMargin> Margins,
    EdgePress PressedEdge,
    PullVerdict Verdict,
    SupportLevel Support);

/// <summary>What a pad does when a tip presses its edge. A mailing list of the trade (2014) reports pads of 1.05 N/mm that lifted within 5 s when a
/// tip at 290 °C pressed the edge, while the same lot passed a rework simulation.</summary>
/// <param name="Force">Force of the tip.</param>
/// <param name="LiftingShare">Part of it that lifts the far edge [1].</param>
/// <param name="Margin">What the pad holds over what lifts it; below 1 it does not hold.</param>
/// <param name="Outcome">What the margin says.</param>
public sealed record EdgePress(RatedEstimate<Force> Force, double LiftingShare, Spread Margin, PullOutcome Outcome);

/// <summary>How hot one joint of a part is.</summary>
/// <param name="Name">Name of the joint, as the user knows it.</param>
/// <param name="Coldest">Temperature of its coldest solder.</param>
/// <param name="Flow">Its flow temperature; null when that is not known: then nothing is known to flow.</param>
public sealed record JointHeat(string Name, Temperature Coldest, Temperature? Flow)
{
    /// <summary>Whether the joint is not known to be at its flow temperature and so still holds the lead.</summary>
    public bool Holds => !(Coldest >= Flow);
}

/// <summary>How a lead is taken out of its joint, gentlest first.</summary>
public enum PullDemand
{
    /// <summary>It comes by itself.</summary>
    [EnumMember(Value = "free lead")]
    Free,

    /// <summary>It is nudged.</summary>
    [EnumMember(Value = "nudged lead")]
    Nudged,

    /// <summary>It is pried.</summary>
    [EnumMember(Value = "pried lead")]
    Pried,
}

/// <summary>Forces that hands and tools put on a pad.</summary>
/// <param name="Free">A lead that comes out by itself [N].</param>
/// <param name="Nudged">A lead that is nudged [N].</param>
/// <param name="Pried">A lead that is pried [N].</param>
/// <param name="PressedEdge">A tip that presses the pad's edge [N].</param>
public sealed record PullParameters(RatedEstimate<Force> Free, RatedEstimate<Force> Nudged, RatedEstimate<Force> Pried, RatedEstimate<Force> PressedEdge);
