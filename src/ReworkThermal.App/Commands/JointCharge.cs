using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Data.Profiles;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>The solder in a joint, as the command line names joint, board and solder.</summary>
internal abstract record JointCharge
{
    private JointCharge()
    {
    }

    /// <summary>The solder is known.</summary>
    /// <param name="JointName">Name of the joint.</param>
    /// <param name="Charge">Mass and composition.</param>
    /// <param name="Notes">What was assumed, one sentence each.</param>
    internal sealed record Known(string JointName, SolderCharge Charge, IReadOnlyList<string> Notes) : JointCharge;

    /// <summary>The words do not lead to one joint with one solder.</summary>
    /// <param name="Reason">What is wrong and what would be right.</param>
    internal sealed record Refused(string Reason) : JointCharge;

    /// <summary>Looks the words up.</summary>
    /// <param name="wish">What was typed.</param>
    /// <param name="shelf">Alloys.</param>
    /// <param name="profiles">Profiles.</param>
    /// <param name="wick">How solder is taken off gold that is tinned first.</param>
    /// <returns>The solder, or why it is not known.</returns>
    internal static JointCharge Find(JointWish wish, MeltingShelf shelf, ProfileLibrary profiles, RemovalMethod wick)
    {
        DesignationReading reading = shelf.Alloys.Find(wish.Solder ?? UsualBench.Solder);
        if (reading is not DesignationReading.Accepted filling)
        {
            return new Refused(((DesignationReading.Refused)reading).Reason);
        }

        return JointChoice.Find(wish.Joint, wish.Board, profiles) switch
        {
            JointChoice.Chosen chosen => InJoint(wish, chosen, filling, shelf.Alloys.Properties, wick),
            JointChoice.Refused refused => new Refused(refused.Reason),
            _ => throw new InvalidOperationException("unknown kind of choice"),
        };
    }

    private static Known InJoint(JointWish wish, JointChoice.Chosen chosen, DesignationReading.Accepted filling, SolderProperties properties, RemovalMethod wick)
    {
        SolderCharge solder = JointSolder.ChargeIn(chosen.Joint, chosen.Board.StackUp.Thickness, filling.Fractions, properties);
        List<string> notes = [.. wish.Solder is null ? [Assumptions.Solder(UsualBench.Solder)] : Array.Empty<string>(), .. filling.Notes, .. chosen.Notes, Assumptions.Filled];
        if (wish.PickedUp.Gold is { } gold)
        {
            Ratio removed = wick.Efficiency.Central;
            notes.Add(Assumptions.Gold(
                Numerals.Milligrams(gold.MassOf(properties)),
                [.. Enumerable.Range(0, 3).Select(cycles => Numerals.Percent(gold.ShareAfter(solder.Amount, cycles, removed, properties).DecimalFractions))],
                wick.Name,
                Numerals.Percent(removed.DecimalFractions)));
        }

        return new Known(chosen.Joint.Name, PickedUp.In(solder, wish.PickedUp, properties), notes);
    }
}
