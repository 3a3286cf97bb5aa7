using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Wiring;
using ReworkThermal.Data.Wires;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>wire</c>: jumper wires before and after they are laid.</summary>
internal static class WireCommand
{
    private const double UsualAmbientC = 25;

    /// <summary>Defines <c>wire</c> and what is under it.</summary>
    internal static Command Define(Shell shell, JobOptions options) => new("wire", HelpText.Wires)
    {
        options.Job,
        Judge(shell, options),
        Pair(shell, options),
        WirePlanCommand.Define(shell, options),
        Run(shell, options),
        List(shell, options),
    };

    private static Command Judge(Shell shell, JobOptions options)
    {
        Option<int?> awg = Awg();
        Option<double?> length = Numbers.Option("--length", HelpText.WireLength, 0.1, 1000, "mm");
        Option<double?> current = Numbers.Option("--current", HelpText.WireCurrent, 0, 100, "A");
        Option<double?> supply = Numbers.Option("--supply", HelpText.WireSupply, 0.1, 1000, "V");
        Option<double?> ambient = Numbers.Option("--ambient", HelpText.WireAmbient, -50, 300, "°C");
        Option<string> kind = Kind();
        Option<bool> crosses = new("--crosses-copper") { Description = HelpText.CrossesCopper };
        foreach (Option needed in (Option[])[awg, length, current])
        {
            needed.Required = true;
        }

        Command command = new("judge", HelpText.WireJudge) { awg, length, current, supply, ambient, kind, crosses };
        command.SetAction(parse => Front.Show(
            KindOf(shell, parse.GetRequiredValue(kind), out WireKind? wire) is { } fault
                ? new Reply.Misused(fault)
                : Judged(shell, wire!, new WireTask(
                    new WireGauge(parse.GetValue(awg)!.Value),
                    Length.FromMillimeters(parse.GetValue(length)!.Value),
                    ElectricCurrent.FromAmperes(parse.GetValue(current)!.Value),
                    parse.GetValue(supply) is { } volts ? ElectricPotential.FromVolts(volts) : null,
                    Temperature.FromDegreesCelsius(parse.GetValue(ambient) ?? UsualAmbientC),
                    parse.GetValue(crosses))),
            parse.GetValue(options.Json),
            shell));
        return command;
    }

    private static Reply Judged(Shell shell, WireKind kind, WireTask task)
    {
        WireReport report = WireJudge.Judge(task, kind, Limits(shell));
        WireView view = new(task, kind, report);
        return report.Fitness is WireFitness.Unfit ? new Reply.AnsweredNo(view) : new Reply.Answered(view);
    }

    private static Command Pair(Shell shell, JobOptions options)
    {
        Option<int?> awg = Awg();
        Option<double?> first = Numbers.Option("--first", HelpText.FirstLeg, 0, 1000, "mm");
        Option<double?> second = Numbers.Option("--second", HelpText.SecondLeg, 0, 1000, "mm");
        Option<double?> spacing = Numbers.Option("--spacing", HelpText.Spacing, 0.05, 100, "mm");
        Option<double?> rate = Numbers.Option("--bit-rate", HelpText.BitRate, 0.000_001, 100_000, "Mbit/s");
        Option<string> kind = Kind();
        foreach (Option needed in (Option[])[awg, first, second, rate])
        {
            needed.Required = true;
        }

        Command command = new("pair", HelpText.WirePair) { awg, first, second, spacing, rate, kind };
        command.SetAction(parse => Front.Show(
            KindOf(shell, parse.GetRequiredValue(kind), out WireKind? wire) is { } fault
                ? new Reply.Misused(fault)
                : PairJudged(shell, wire!, new PairTask(
                    new WireGauge(parse.GetValue(awg)!.Value),
                    Length.FromMillimeters(parse.GetValue(first)!.Value),
                    Length.FromMillimeters(parse.GetValue(second)!.Value),
                    parse.GetValue(spacing) is { } mm ? Length.FromMillimeters(mm) : null,
                    BitRate.FromMegabitsPerSecond(parse.GetValue(rate)!.Value))),
            parse.GetValue(options.Json),
            shell));
        return command;
    }

    private static Reply PairJudged(Shell shell, WireKind kind, PairTask task)
    {
        if (task.FirstLeg + task.SecondLeg <= Length.Zero)
        {
            return new Reply.Misused(WireWords.OneLegNeeded);
        }

        return task.Spacing is { } spacing && spacing <= task.Gauge.Diameter
            ? new Reply.Misused(WireWords.TooClose(Numerals.Fixed(task.Gauge.Diameter.Millimeters, 3)))
            : new Reply.Answered(new PairView(task, kind, PairJudge.Judge(task, kind, Limits(shell))));
    }

    private static Command Run(Shell shell, JobOptions options)
    {
        Argument<string> from = new("from") { Description = HelpText.WireFrom };
        Argument<string> to = new("to") { Description = HelpText.WireTo };
        Option<int?> awg = Awg();
        Option<double?> length = Numbers.Option("--length", HelpText.WireLength, 0.1, 1000, "mm");
        Option<string> kind = Kind();
        Option<string?> pair = new("--pair") { Description = HelpText.PairName, HelpName = "name" };
        Option<string?> note = CommonOptions.Note();
        awg.Required = true;
        length.Required = true;
        Command command = new("run", HelpText.WireRun) { from, to, awg, length, kind, pair, note };
        command.SetAction(parse => options.Record(parse, shell, _ =>
        {
            string text = parse.GetRequiredValue(from) + "," + parse.GetRequiredValue(to);
            if (PadNames.Read(text, out IReadOnlyList<PadId> ends) is { } badPad)
            {
                return new EventWish.Refused(badPad);
            }

            string wire = parse.GetRequiredValue(kind);
            return KindOf(shell, wire, out WireKind? known) is { } unknown ? new EventWish.Refused(unknown)
                : ends.Count != 2 ? new EventWish.Refused(WireWords.TwoEnds)
                : new EventWish.Wanted(new JobEvent.WireRun(
                    new JumperWire(
                        ends[0],
                        ends[1],
                        new WireGauge(parse.GetValue(awg)!.Value),
                        Length.FromMillimeters(parse.GetValue(length)!.Value),
                        known!.Insulated ? wire : null,
                        parse.GetValue(pair)),
                    parse.GetValue(note)));
        }));
        return command;
    }

    private static Command List(Shell shell, JobOptions options)
    {
        Command command = new("list", HelpText.WireList);
        command.SetAction(parse => options.OnJob(parse, shell, (_, picked) => new Reply.Answered(new WireListView(picked.State, picked.Notes))));
        return command;
    }

    private static Option<int?> Awg() => Numbers.WholeOption("--awg", HelpText.Awg, WireGauge.Thickest, WireGauge.Thinnest);

    private static Option<string> Kind() => new("--kind") { Description = HelpText.WireKindName, HelpName = "name", Required = true };

    private static string? KindOf(Shell shell, string name, out WireKind? kind)
    {
        List<string> known = [.. shell.Data.Files("profiles/wires").Select(f => Path.GetFileNameWithoutExtension(f))];
        if (!known.Contains(name, StringComparer.Ordinal))
        {
            kind = null;
            return JobWords.UnknownProfile("wire", name, known);
        }

        kind = WireFiles.LoadKind(shell.Data.File($"profiles/wires/{name}.toml"));
        return null;
    }

    private static WireLimits Limits(Shell shell) => WireFiles.LoadLimits(shell.Data.File("profiles/limits/jumper-wires.toml"));
}
