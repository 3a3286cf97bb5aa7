using System.CommandLine;
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

    /// <summary>The option <c>--joint NAME</c>.</summary>
    internal static Option<string> JointOption() => new("--joint") { Description = HelpText.Joint, HelpName = "name", Required = true };

    /// <summary>The option <c>--board NAME</c>.</summary>
    internal static Option<string?> BoardOption() => new("--board") { Description = HelpText.Board, HelpName = "name" };

    /// <summary>The option <c>--solder COMPOSITION</c>.</summary>
    internal static Option<string?> SolderOption() => new("--solder") { Description = HelpText.Solder, HelpName = "composition" };

    /// <summary>Looks the words up.</summary>
    /// <param name="joint">Identifier of a joint profile.</param>
    /// <param name="board">Identifier of a board profile; null when not named.</param>
    /// <param name="solder">What is in the joint; null when not named.</param>
    /// <param name="pickedUp">Metal that the solder has taken up.</param>
    /// <param name="shelf">Alloys.</param>
    /// <param name="profiles">Profiles.</param>
    /// <returns>The solder, or why it is not known.</returns>
    internal static JointCharge Find(string joint, string? board, string? solder, (Mass Copper, Mass Silver) pickedUp, MeltingShelf shelf, ProfileLibrary profiles)
    {
        DesignationReading reading = shelf.Alloys.Find(solder ?? UsualBench.Solder);
        if (reading is not DesignationReading.Accepted filling)
        {
            return new Refused(((DesignationReading.Refused)reading).Reason);
        }

        return JointChoice.Find(joint, board, profiles) switch
        {
            JointChoice.Chosen chosen => new Known(
                chosen.Joint.Name,
                PickedUp.In(JointSolder.ChargeIn(chosen.Joint, chosen.Board.StackUp.Thickness, filling.Fractions, shelf.Alloys.Properties), pickedUp),
                [.. solder is null ? [Assumptions.Solder(UsualBench.Solder)] : Array.Empty<string>(), .. filling.Notes, .. chosen.Notes, Assumptions.Filled]),
            JointChoice.Refused refused => new Refused(refused.Reason),
            _ => throw new InvalidOperationException("unknown kind of choice"),
        };
    }
}
