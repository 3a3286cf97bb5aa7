using ReworkThermal.Core.Composition;
using UnitsNet;

namespace ReworkThermal.Core.Mixing;

/// <summary>
/// What stays in a joint after passes, and what the refitted joint is made of. All solder is taken to be molten and mixed before it is
/// removed, so a pass removes a share of everything; solder that never melted is not covered.
/// </summary>
public static class Cleaning
{
    /// <summary>Residue after each pass.</summary>
    /// <param name="joint">Solder in the joint before the first pass.</param>
    /// <param name="passes">The passes in order.</param>
    /// <returns>One residue per pass.</returns>
    public static IReadOnlyList<SolderCharge> ResiduesAfter(SolderCharge joint, IEnumerable<CleaningPass> passes)
    {
        ArgumentNullException.ThrowIfNull(joint);
        ArgumentNullException.ThrowIfNull(passes);
        List<SolderCharge> residues = [];
        SolderCharge current = joint;
        foreach (CleaningPass pass in passes)
        {
            current = current.With(pass.Added).Without(pass.Removed);
            residues.Add(current);
        }

        return residues;
    }

    /// <summary>The joint after the refit: residue plus as much refill alloy as fills it again.</summary>
    /// <param name="residue">What the last pass left.</param>
    /// <param name="refill">Composition of the refill alloy.</param>
    /// <param name="full">Mass of solder in the full joint.</param>
    /// <returns>The final joint; the residue alone when it already fills the joint.</returns>
    public static SolderCharge Refilled(SolderCharge residue, MassFractions refill, Mass full)
    {
        ArgumentNullException.ThrowIfNull(residue);
        ArgumentNullException.ThrowIfNull(refill);
        return residue.Amount >= full ? residue : residue.With(new SolderCharge(full - residue.Amount, refill));
    }

    /// <summary>Passes of one add-and-remove plan: first the dilution alloy, then the flushing alloy in the amount that fills the joint.</summary>
    /// <param name="joint">Solder in the joint before the first pass.</param>
    /// <param name="dilution">What the first pass adds.</param>
    /// <param name="flush">Composition that later passes add to fill the joint again.</param>
    /// <param name="count">Number of passes, zero or more.</param>
    /// <param name="removed">Share that each pass removes.</param>
    /// <returns>The passes.</returns>
    public static IReadOnlyList<CleaningPass> DiluteThenFlush(
        SolderCharge joint,
        SolderCharge dilution,
        MassFractions flush,
        int count,
        Ratio removed)
    {
        ArgumentNullException.ThrowIfNull(joint);
        ArgumentNullException.ThrowIfNull(dilution);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        List<CleaningPass> passes = [];
        SolderCharge current = joint;
        for (int i = 0; i < count; i++)
        {
            SolderCharge added = i == 0 ? dilution : new SolderCharge(UnitMath.Max(joint.Amount - current.Amount, Mass.Zero), flush);
            CleaningPass pass = new(added, removed);
            passes.Add(pass);
            current = current.With(added).Without(removed);
        }

        return passes;
    }
}
