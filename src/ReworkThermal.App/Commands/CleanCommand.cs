using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Reports;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>clean</c>: the joint after passes and refit, and how many passes are enough.</summary>
internal static class CleanCommand
{
    private const string UsualSolder = "Sn96.5Ag3Cu0.5";

    private const string UsualRemoval = "braid";

    private const double UsualRatio = 0.5;

    private const double MostShare = 0.9;

    private const int MostPasses = 12;

    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        Option<string> joint = new("--joint") { Description = HelpText.Joint, HelpName = "name", Required = true };
        Option<string?> board = new("--board") { Description = HelpText.Board, HelpName = "name" };
        Option<string?> solder = new("--solder") { Description = HelpText.Solder, HelpName = "composition" };
        Option<string> with = new("--with") { Description = HelpText.With, HelpName = "alloy", Required = true };
        Option<double?> ratio = Numbers.Option("--ratio", HelpText.Ratio, 0, MostShare, string.Empty);
        Option<double?> passes = Numbers.Option("--passes", HelpText.Passes, 1, MostPasses, string.Empty);
        passes.Required = true;
        Option<string> refill = new("--refill") { Description = HelpText.Refill, HelpName = "alloy", Required = true };
        Option<string?> flush = new("--flush") { Description = HelpText.Flush, HelpName = "alloy" };
        Option<string?> removal = new("--removal") { Description = HelpText.Removal, HelpName = "name" };
        PickedUp pickedUp = new();
        Command command = new("clean", HelpText.Clean) { joint, board, solder, with, ratio, passes, refill, flush, removal };
        pickedUp.AddTo(command);
        command.SetAction(parse => Front.Show(
            Answer(shell, new CleaningWish(
                parse.GetRequiredValue(joint),
                parse.GetValue(board),
                parse.GetValue(solder),
                parse.GetRequiredValue(with),
                parse.GetValue(ratio),
                parse.GetValue(passes) ?? 1,
                parse.GetRequiredValue(refill),
                parse.GetValue(flush),
                parse.GetValue(removal),
                pickedUp.Read(parse))),
            parse.GetValue(json),
            shell));
        return command;
    }

    private static Reply Answer(Shell shell, CleaningWish wish)
    {
        if (wish.Passes != Math.Floor(wish.Passes))
        {
            return new Reply.Misused(Refusals.WholePasses);
        }

        MeltingShelf shelf = new(shell.Data);
        Workshop workshop = Workshop.Load(shell.Data);
        RemovalMethod? removal = workshop.Removals.FirstOrDefault(r => r.Name == (wish.Removal ?? UsualRemoval));
        if (removal is null)
        {
            return new Reply.Misused(Refusals.UnknownName("--removal", wish.Removal!, workshop.Removals.Select(r => r.Name)));
        }

        string[] texts = [wish.Solder ?? UsualSolder, wish.With, wish.Refill, wish.Flush ?? wish.Refill];
        DesignationReading[] readings = [.. texts.Select(shelf.Alloys.Find)];
        if (readings.OfType<DesignationReading.Refused>().FirstOrDefault() is { } refused)
        {
            return new Reply.Misused(refused.Reason);
        }

        return JointChoice.Find(wish.Joint, wish.Board, workshop.Profiles) switch
        {
            JointChoice.Refused misfit => new Reply.Misused(misfit.Reason),
            JointChoice.Chosen chosen => Answer(wish, texts, [.. readings.Cast<DesignationReading.Accepted>()], chosen, removal, shelf),
            _ => throw new InvalidOperationException("unknown kind of choice"),
        };
    }

    private static Reply Answer(
        CleaningWish wish,
        string[] names,
        DesignationReading.Accepted[] solders,
        JointChoice.Chosen chosen,
        RemovalMethod removal,
        MeltingShelf shelf)
    {
        SolderCharge joint = PickedUp.In(
            JointSolder.ChargeIn(chosen.Joint, chosen.Board.StackUp.Thickness, solders[0].Fractions, shelf.Alloys.Properties),
            wish.PickedUp);
        Mass added = joint.AmountForShare(Ratio.FromDecimalFractions(wish.Ratio ?? UsualRatio));
        CleaningQuestion question = new(joint, new SolderCharge(added, solders[1].Fractions), solders[3].Fractions, solders[2].Fractions, removal, MostPasses);
        switch (new CleaningSearch(shelf.Engine).Answer(question))
        {
            case CleaningAnswer.Failed failed:
                return new Reply.Unusable(failed.Reason);
            case CleaningAnswer.Followed followed:
                FinalJoint asked = followed.ByPasses[(int)wish.Passes - 1];
                IReadOnlyList<string> sources = shelf.SourcesFor(asked.Joint.Fractions.MixedWith(solders[1].Fractions, 0.5));
                CleaningReport report = new(
                    chosen.Joint.Name,
                    joint,
                    names[1],
                    added,
                    names[3],
                    names[2],
                    asked,
                    new MeltReporting(shelf.Engine, shelf.Alloys.Properties).Computed(asked.Melting, asked.Freezing, [], sources),
                    followed.ByPasses,
                    followed.Enough,
                    followed.EnoughAtBest,
                    followed.EnoughAtWorst,
                    removal,
                    MixHazards.Of(joint.Fractions.MixedWith(solders[2].Fractions, 0.5), solders[1].Fractions),
                    [.. Assumed(wish), .. solders.SelectMany(s => s.Notes).Distinct(), .. chosen.Notes, Assumptions.Filled, CleaningWords.FlushAssumption(names[3])],
                    sources);
                CleaningView view = new(report);
                return asked.IsClean ? new Reply.Answered(view) : new Reply.AnsweredNo(view);
            default:
                throw new InvalidOperationException("unknown kind of cleaning answer");
        }
    }

    private static IEnumerable<string> Assumed(CleaningWish wish)
    {
        if (wish.Solder is null)
        {
            yield return Assumptions.Solder(UsualSolder);
        }

        if (wish.Ratio is null)
        {
            yield return CleaningWords.RatioAssumption;
        }

        if (wish.Removal is null)
        {
            yield return CleaningWords.RemovalAssumption(UsualRemoval);
        }
    }
}
