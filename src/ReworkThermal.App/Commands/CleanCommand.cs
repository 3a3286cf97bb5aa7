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
    private const string UsualRemoval = "braid";

    private const double UsualRatio = 0.5;

    private const double MostShare = 0.9;

    private const int MostPasses = 12;

    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        Option<string> joint = JointCharge.JointOption();
        Option<string?> board = JointCharge.BoardOption();
        Option<string?> solder = JointCharge.SolderOption();
        Option<string> with = new("--with") { Description = HelpText.With, HelpName = "alloy", Required = true };
        Option<double?> ratio = Numbers.Option("--ratio", HelpText.Ratio, 0, MostShare, string.Empty);
        Option<int?> passes = Numbers.WholeOption("--passes", HelpText.Passes, 1, MostPasses);
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
        MeltingShelf shelf = new(shell.Data);
        Workshop workshop = Workshop.Load(shell.Data);
        RemovalMethod? removal = workshop.Removals.FirstOrDefault(r => r.Name == (wish.Removal ?? UsualRemoval));
        if (removal is null)
        {
            return new Reply.Misused(Refusals.UnknownName("--removal", wish.Removal!, workshop.Removals.Select(r => r.Name)));
        }

        string[] names = [wish.With, wish.Refill, wish.Flush ?? wish.Refill];
        DesignationReading[] readings = [.. names.Select(shelf.Alloys.Find)];
        if (readings.OfType<DesignationReading.Refused>().FirstOrDefault() is { } refused)
        {
            return new Reply.Misused(refused.Reason);
        }

        return JointCharge.Find(wish.Joint, wish.Board, wish.Solder, wish.PickedUp, shelf, workshop.Profiles) switch
        {
            JointCharge.Refused misfit => new Reply.Misused(misfit.Reason),
            JointCharge.Known joint => Answer(wish, names, [.. readings.Cast<DesignationReading.Accepted>()], joint, removal, shelf),
            _ => throw new InvalidOperationException("unknown kind of choice"),
        };
    }

    private static Reply Answer(
        CleaningWish wish,
        string[] names,
        DesignationReading.Accepted[] solders,
        JointCharge.Known known,
        RemovalMethod removal,
        MeltingShelf shelf)
    {
        SolderCharge joint = known.Charge;
        Mass added = joint.AmountForShare(Ratio.FromDecimalFractions(wish.Ratio ?? UsualRatio));
        CleaningQuestion question = new(joint, new SolderCharge(added, solders[0].Fractions), solders[2].Fractions, solders[1].Fractions, removal, MostPasses);
        switch (new CleaningSearch(shelf.Engine).Answer(question))
        {
            case CleaningAnswer.Failed failed:
                return new Reply.Unusable(failed.Reason);
            case CleaningAnswer.Followed followed:
                FinalJoint asked = followed.ByPasses[wish.Passes - 1];
                IReadOnlyList<string> sources = shelf.SourcesFor(asked.Joint.Fractions.MixedWith(solders[0].Fractions, 0.5));
                CleaningReport report = new(
                    known.JointName,
                    joint,
                    names[0],
                    added,
                    names[2],
                    names[1],
                    asked,
                    new MeltReporting(shelf.Engine, shelf.Alloys.Properties).Computed(asked.Melting, asked.Freezing, [], sources),
                    followed.ByPasses,
                    followed.Enough,
                    followed.EnoughAtBest,
                    followed.EnoughAtWorst,
                    removal,
                    MixHazards.Of(joint.Fractions.MixedWith(solders[1].Fractions, 0.5), solders[0].Fractions),
                    [.. Assumed(wish), .. known.Notes, .. solders.SelectMany(s => s.Notes).Distinct(), CleaningWords.FlushAssumption(names[2])],
                    sources);
                CleaningView view = new(report);
                return asked.IsClean ? new Reply.Answered(view) : new Reply.AnsweredNo(view);
            default:
                throw new InvalidOperationException("unknown kind of cleaning answer");
        }
    }

    private static IEnumerable<string> Assumed(CleaningWish wish)
    {
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
