using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Reports.Solders;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>dilute</c>: what an added alloy does to the solder of a joint, and how much of it is needed.</summary>
internal static class DiluteCommand
{
    private const double UsualWireMm = 0.8;

    // Flow of tin-lead eutectic solder, the temperature that irons, parts and hands are used to.
    private const double UsualTargetC = 183;

    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        JointOptions joint = new();
        Option<string?> with = new("--with") { Description = HelpText.With, HelpName = "alloy" };
        Option<double?> ratio = Numbers.Option("--ratio", HelpText.Ratio, 0, AskLimits.MostShare, string.Empty);
        Option<double?> target = Numbers.Option("--target-flow", HelpText.TargetFlow, 50, 350, "°C");
        Option<double?> wire = Numbers.Option("--wire", HelpText.Wire, 0.2, 3, "mm");
        Option<bool> leadFree = new("--lead-free") { Description = HelpText.LeadFree };
        Option<bool> all = new("--all-alloys") { Description = HelpText.AllAlloys };
        Command command = new("dilute", HelpText.Dilute);
        joint.AddTo(command);
        foreach (Option option in (Option[])[with, ratio, target, wire, leadFree, all])
        {
            command.Add(option);
        }

        command.SetAction(parse => Front.Show(
            Answer(shell, new DilutionWish(
                joint.Read(parse),
                parse.GetValue(with),
                parse.GetValue(ratio),
                parse.GetValue(target),
                parse.GetValue(wire),
                parse.GetValue(leadFree),
                parse.GetValue(all))),
            parse.GetValue(json),
            shell));
        return command;
    }

    private static Reply Answer(Shell shell, DilutionWish wish)
    {
        if ((wish.Ratio is not null && wish.TargetFlow is not null) || (wish.With is not null && wish.Ratio is null && wish.TargetFlow is null))
        {
            return new Reply.Misused(Refusals.RatioOrTarget);
        }

        List<string> assumed = [];
        if (wish.Ratio is null && wish.TargetFlow is null)
        {
            wish = wish with { TargetFlow = UsualTargetC };
            assumed.Add(Assumptions.Target(Numerals.Celsius(Temperature.FromDegreesCelsius(UsualTargetC), 0)));
        }

        MeltingShelf shelf = new(shell.Data);
        Workshop workshop = Workshop.Load(shell.Data);
        IReadOnlyList<Alloy>? alloys = AlloysFor(wish, shelf);
        return (alloys, JointCharge.Find(wish.Joint, shelf, workshop.Profiles, workshop.Removals.First(r => r.Name == UsualBench.Removal))) switch
        {
            (null, _) => new Reply.Misused(Refusals.UnknownName("--with", wish.With!, shelf.Alloys.Dilutions.Select(a => a.Name))),
            (_, JointCharge.Refused refused) => new Reply.Misused(refused.Reason),
            ({ } known, JointCharge.Known joint) => Answer(shell, wish, known, joint with { Notes = [.. assumed, .. joint.Notes] }, shelf, workshop),
            _ => throw new InvalidOperationException("unknown kind of choice"),
        };
    }

    private static Reply Answer(
        Shell shell,
        DilutionWish wish,
        IReadOnlyList<Alloy> alloys,
        JointCharge.Known joint,
        MeltingShelf shelf,
        Workshop workshop)
    {
        Length diameter = Length.FromMillimeters(wish.WireMm ?? UsualWireMm);
        SolderProperties properties = shelf.Alloys.Properties;
        DilutionReporting reporting = new(new MeltReporting(shelf.Engine, properties), alloy => alloy.Forms.Contains("wire", StringComparer.Ordinal)
            ? new SolderWire(diameter, properties.SolidDensity(alloy.Fractions), workshop.Wire.FluxShare.Central, workshop.Wire.FluxDensity.Central)
            : null);
        (IReadOnlyList<DilutionChoice> choices, IReadOnlyList<ExcludedAlloy> excluded) = Choose(shell, wish, alloys, joint.Charge, shelf);
        IReadOnlyList<string> sources = [.. choices.SelectMany(c => shelf.SourcesFor(c.Mix.Fractions)).Distinct(StringComparer.Ordinal)];
        DilutionReport report = new(
            joint.JointName,
            joint.Charge.Fractions,
            joint.Charge.Amount,
            [.. choices.Select(c => reporting.Line(c, []))],
            DilutionReporting.LeftOut(excluded),
            [
                .. joint.Notes,
                .. choices.Select(c => c.Alloy).Where(a => a.Melting.IsArrest).Select(a => PrintedWords.Of(a, new MeltReporting(shelf.Engine, properties).Melting(a.Fractions, [], []), shelf.Alloys.Sources.Cite)),
                Assumptions.Wire(Numerals.Millimetres(diameter), Numerals.Percent(workshop.Wire.FluxShare.Central.DecimalFractions)),
            ],
            sources);
        DilutionView view = new(report, single: wish.With is not null && choices.Count == 1);
        return choices.Count > 0 ? new Reply.Answered(view) : new Reply.AnsweredNo(view);
    }

    private static (IReadOnlyList<DilutionChoice> Choices, IReadOnlyList<ExcludedAlloy> Excluded) Choose(
        Shell shell,
        DilutionWish wish,
        IReadOnlyList<Alloy> alloys,
        SolderCharge charge,
        MeltingShelf shelf)
    {
        DilutionSearch search = new(shelf.Engine);
        if (wish.TargetFlow is { } target)
        {
            DilutionRanking ranking = search.Rank(
                new DilutionQuestion(charge, alloys, Temperature.FromDegreesCelsius(target), wish.LeadFreeOnly, Ratio.FromDecimalFractions(AskLimits.MostShare)),
                shell.Cancellation);
            return (ranking.Choices, ranking.Excluded);
        }

        List<DilutionChoice> choices = [];
        List<ExcludedAlloy> excluded = [];
        foreach (Alloy alloy in alloys)
        {
            shell.Cancellation.ThrowIfCancellationRequested();
            if (wish.LeadFreeOnly && !alloy.IsLeadFree)
            {
                excluded.Add(new ExcludedAlloy(alloy.Name, DilutionWords.HasLead));
                continue;
            }

            switch (search.Mix(charge, alloy, Ratio.FromDecimalFractions(wish.Ratio!.Value)))
            {
                case DilutionOutcome.Mixed mixed:
                    choices.Add(mixed.Choice);
                    break;
                case DilutionOutcome.Failed failed:
                    excluded.Add(new ExcludedAlloy(alloy.Name, failed.Reason));
                    break;
            }
        }

        return ([.. choices.OrderBy(c => c.Melting.Flow.Kelvins)], excluded);
    }

    private static IReadOnlyList<Alloy>? AlloysFor(DilutionWish wish, MeltingShelf shelf)
    {
        if (wish.With is null)
        {
            return wish.AllAlloys ? shelf.Alloys.Dilutions : shelf.Alloys.UsualDilutions;
        }

        Alloy? known = shelf.Alloys.Dilutions.Concat(shelf.Alloys.Solders)
            .FirstOrDefault(a => string.Equals(a.Name, wish.With, StringComparison.OrdinalIgnoreCase));
        return known is null ? null : [known];
    }
}
