using System.Globalization;
using System.Runtime.Serialization;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.HeatFlow.Boundaries;
using UnitsNet;

namespace ReworkThermal.Core.Tools;

/// <summary>
/// Contact conductance between tip and joint over the wetted area, from touch-down to the wetted contact. No published measurement of a
/// tip on a molten bead was found; the ranges are wide on purpose.
/// </summary>
/// <param name="State">State of the contact.</param>
/// <param name="AtTouchDown">Conductance per area when the tip comes down, above zero.</param>
/// <param name="Wetted">Conductance per area once it has wetted, not below the first.</param>
/// <param name="WettingTime">Time constant of the growth, above zero.</param>
/// <param name="WaitsForMelt">Whether it grows only once the solder at the tip's face is molten: a dry tip brings no liquid of its own.</param>
public sealed record TipContact(
    ContactState State,
    Estimate<HeatTransferCoefficient> AtTouchDown,
    Estimate<HeatTransferCoefficient> Wetted,
    Estimate<Duration> WettingTime,
    bool WaitsForMelt)
{
    /// <summary>The flux at the joint; fresh unless said otherwise.</summary>
    public FluxState Flux { get; init; }

    /// <summary>The contact in words, for notes.</summary>
    /// <returns>A clause.</returns>
    internal string Words()
    {
        double first = AtTouchDown.Central.WattsPerSquareMeterKelvin;
        string grows = Flux == FluxState.Spent
            ? "stays there, because the flux is spent"
            : string.Create(CultureInfo.InvariantCulture, $"grows to {Wetted.Central.WattsPerSquareMeterKelvin:0} W/m²K within {WettingTime.Central.Seconds:0.##} s or so, with fresh flux{(WaitsForMelt ? ", once the solder at the tip is molten" : string.Empty)}");
        return string.Create(CultureInfo.InvariantCulture, $"{first:0} W/m²K when the tip comes down and {grows} (judgement)");
    }

    /// <summary>The contact with central values.</summary>
    /// <returns>Its growth; with spent flux it stays as it was at touch-down.</returns>
    public ContactGrowth Central() => Flux == FluxState.Spent
        ? ContactGrowth.Steady(AtTouchDown.Central)
        : new ContactGrowth(AtTouchDown.Central, Wetted.Central, WettingTime.Central, WaitsForMelt);
}

/// <summary>The flux between tip and joint.</summary>
public enum FluxState
{
    /// <summary>Fresh: the contact wets.</summary>
    [EnumMember(Value = "fresh")]
    Fresh,

    /// <summary>Burnt off or none: the contact stays as it was at touch-down.</summary>
    [EnumMember(Value = "spent")]
    Spent,
}
