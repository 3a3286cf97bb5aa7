using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Reports.Solders;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>clean</c>: what passes leave in a joint, and what the refitted joint does.</summary>
internal static class CleanCommand
{
    private const double UsualShare = 0.3;

    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        JointOptions joint = new();
        Option<string> with = new("--with") { Description = HelpText.With, HelpName = "alloy", Required = true };
        Option<double?> ratio = Numbers.Option("--ratio", HelpText.FirstRatio, 0, AskLimits.MostShare, string.Empty);
        Option<int?> passes = Numbers.WholeOption("--passes", HelpText.Passes, 1, AskLimits.MostPasses);
        Option<string> refill = new("--refill") { Description = HelpText.Refill, HelpName = "composition", Required = true };
        Option<string?> removal = new("--removal") { Description = HelpText.Removal, HelpName = "name" };
        Command command = new("clean", HelpText.Clean);
        joint.AddTo(command);
        foreach (Option option in (Option[])[with, ratio, passes, refill, removal])
        {
            command.Add(option);
        }

        command.SetAction(parse => Front.Show(
            Answer(shell, new CleaningWish(
                joint.Read(parse),
                parse.GetRequiredValue(with),
                parse.GetValue(ratio),
                parse.GetValue(passes),
                parse.GetRequiredValue(refill),
                parse.GetValue(removal))),
            parse.GetValue(json),
            shell));
        return command;
    }

    private static Reply Answer(Shell shell, CleaningWish wish)
    {
        MeltingShelf shelf = new(shell.Data);
        Workshop workshop = Workshop.Load(shell.Data);
        string way = wish.Removal ?? UsualBench.Removal;
        RemovalMethod? removal = workshop.Removals.FirstOrDefault(r => string.Equals(r.Name, way, StringComparison.OrdinalIgnoreCase));
        if (removal is null)
        {
            return new Reply.Misused(Refusals.UnknownName("--removal", way, workshop.Removals.Select(r => r.Name)));
        }

        return (shelf.Alloys.Find(wish.With), shelf.Alloys.Find(wish.Refill), JointCharge.Find(wish.Joint, shelf, workshop.Profiles, removal)) switch
        {
            (DesignationReading.Refused refused, _, _) => new Reply.Misused(refused.Reason),
            (_, DesignationReading.Refused refused, _) => new Reply.Misused(refused.Reason),
            (_, _, JointCharge.Refused refused) => new Reply.Misused(refused.Reason),
            (DesignationReading.Accepted added, DesignationReading.Accepted refill, JointCharge.Known joint) => Answer(wish, added.Fractions, refill.Fractions, joint, removal, shelf),
            _ => throw new InvalidOperationException("unknown kind of reading"),
        };
    }

    private static Reply Answer(CleaningWish wish, MassFractions added, MassFractions refill, JointCharge.Known joint, RemovalMethod removal, MeltingShelf shelf)
    {
        Ratio share = Ratio.FromDecimalFractions(wish.Ratio ?? UsualShare);
        CleaningAnswer answer = new CleaningSearch(shelf.Engine).Answer(new CleaningQuestion(
            joint.Charge,
            new SolderCharge(joint.Charge.AmountForShare(share), added),
            refill,
            refill,
            removal,
            AskLimits.MostPasses));
        if (answer is not CleaningAnswer.Followed followed)
        {
            return new Reply.AnsweredNo(new FailureView(joint.JointName, ((CleaningAnswer.Failed)answer).Reason));
        }

        List<string> notes = [.. joint.Notes];
        if (wish.Ratio is null)
        {
            notes.Add(Assumptions.FirstShare(Numerals.Percent(UsualShare)));
        }

        notes.Add(Assumptions.Removal(
            removal.Name,
            Numerals.Percent(removal.Efficiency.Central.DecimalFractions),
            Numerals.Percent(removal.Efficiency.Low.DecimalFractions),
            Numerals.Percent(removal.Efficiency.High.DecimalFractions)));
        notes.Add(Assumptions.Flush);
        int asked = wish.Passes ?? followed.Enough ?? AskLimits.MostPasses;
        FinalJoint last = followed.ByPasses[asked - 1];
        CleaningReport report = new(
            joint.JointName,
            joint.Charge.Fractions,
            joint.Charge.Amount,
            wish.With,
            refill,
            asked,
            [.. followed.ByPasses.Select(FinalJointReporting.CleaningLine)],
            followed.Enough,
            followed.EnoughAtBest,
            followed.EnoughAtWorst,
            last.Melting.Uncertainty,
            [.. notes, .. last.Melting.Caveats],
            shelf.SourcesFor(last.Joint.Fractions));
        CleaningView view = new(report);
        return last.IsClean ? new Reply.Answered(view) : new Reply.AnsweredNo(view);
    }
}
