using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>
/// Some solder: how much and of what composition. Start reading this room here: charges are mixed, drained and refilled; what a mix
/// does on heating is asked of the phase engine.
/// </summary>
/// <param name="Amount">Mass, zero or more.</param>
/// <param name="Fractions">Composition by mass.</param>
public sealed record SolderCharge(Mass Amount, MassFractions Fractions)
{
    /// <summary>Melts another charge into this one. The order does not matter: mass of every element is conserved.</summary>
    /// <param name="added">What is added.</param>
    /// <returns>The mix.</returns>
    public SolderCharge With(SolderCharge added)
    {
        ArgumentNullException.ThrowIfNull(added);
        Mass total = Amount + added.Amount;
        return total.Kilograms > 0
            ? new SolderCharge(total, Fractions.MixedWith(added.Fractions, added.Amount / total))
            : this;
    }

    /// <summary>Takes molten solder away; what stays has the same composition, because all of it was liquid and mixed.</summary>
    /// <param name="removed">Share of the mass that is taken away, 0 to 100 %.</param>
    /// <returns>The residue.</returns>
    public SolderCharge Without(Ratio removed)
    {
        double share = removed.DecimalFractions;
        return share is >= 0 and <= 1
            ? this with { Amount = Amount * (1 - share) }
            : throw new ArgumentOutOfRangeException(nameof(removed), removed, "a removed share lies between 0 and 100 %");
    }

    /// <summary>Mass of another charge that gives it a wanted share of the mix: share = added / (this + added).</summary>
    /// <param name="share">Wanted mass share of the added charge, 0 to below 100 %.</param>
    /// <returns>Mass to add.</returns>
    public Mass AmountForShare(Ratio share)
    {
        double fraction = share.DecimalFractions;
        return fraction is >= 0 and < 1
            ? Amount * (fraction / (1 - fraction))
            : throw new ArgumentOutOfRangeException(nameof(share), share, "the added share lies between 0 and below 100 %");
    }

    /// <summary>Adds an element picked up from barrel, pad finish or leg, for example dissolved copper.</summary>
    /// <param name="element">The element.</param>
    /// <param name="amount">Mass picked up, zero or more.</param>
    /// <returns>The enriched charge.</returns>
    public SolderCharge PickingUp(Element element, Mass amount) => With(new SolderCharge(amount, MassFractions.Of((element, 1))));
}
