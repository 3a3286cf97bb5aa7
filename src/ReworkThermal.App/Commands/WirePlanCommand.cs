using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Requests;
using UnitsNet;
using ToolSetting = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>wire plan</c>: settings for the touch that solders the end of a wire.</summary>
internal static class WirePlanCommand
{
    private const string UsualSolder = "Sn63Pb37";

    private const double StepK = 20;

    private const double LeastC = 240;

    private const double MostC = 400;

    private const double LeastPreheatC = 30;

    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, JobOptions options)
    {
        Option<string?> pad = PadNames.Option(HelpText.Pad, isRequired: true);
        Option<string?> with = new("--with") { Description = HelpText.WireSolder, HelpName = "alloy" };
        Option<string?> preheater = new("--preheater") { Description = HelpText.PreheaterName, HelpName = "name" };
        Option<double?> preheatSet = Numbers.Option("--preheat-set", HelpText.PreheatSet, LeastPreheatC, 1000, "°C");
        Option<double?> board = Numbers.Option("--board-temp", HelpText.BoardTemperature, -20, 250, "°C");
        Command command = new("plan", HelpText.WirePlan) { pad, with, preheater, preheatSet, board };
        command.SetAction(parse => options.OnJob(parse, shell, (_, picked) =>
        {
            if (PadNames.Read(parse.GetValue(pad), out IReadOnlyList<PadId> named) is { } fault)
            {
                return new Reply.Misused(fault);
            }

            if (named.Count != 1)
            {
                return new Reply.Misused(JobWords.JustOnePad);
            }

            (string? heater, double? heaterSet) = (parse.GetValue(preheater), parse.GetValue(preheatSet));
            if ((heater is null) != (heaterSet is null))
            {
                return new Reply.Misused(Refusals.BothOrNone("--preheater", "--preheat-set"));
            }

            ToolSetting.Preheater? heat = heater is null ? null : new ToolSetting.Preheater(heater, Temperature.FromDegreesCelsius(heaterSet!.Value));
            Temperature? start = parse.GetValue(board) is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;
            return Answer(shell, picked, named[0], parse.GetValue(with), heat, start);
        }));
        return command;
    }

    private static Reply Answer(Shell shell, JobPick.Picked picked, PadId pad, string? with, ToolSetting.Preheater? heat, Temperature? board)
    {
        JobWorkshop workshop = new(shell);
        JobSite site = workshop.SiteOf(picked.State.Brief);
        if (site is not JobSite.Known known)
        {
            return new Reply.Misused(((JobSite.Unknown)site).Reason);
        }

        if (!picked.State.Pads.ContainsKey(pad))
        {
            return new Reply.Misused(BudgetWords.NoSuchPad(pad, picked.State.Pads.Keys));
        }

        if (HeaterFault(heat, workshop.Workshop.Profiles.Preheaters) is { } noHeater)
        {
            return new Reply.Misused(noHeater);
        }

        DesignationReading reading = workshop.Melting.Alloys.Find(with ?? UsualSolder);
        if (reading is not DesignationReading.Accepted solder)
        {
            return new Reply.Misused(((DesignationReading.Refused)reading).Reason);
        }

        // A pad without a profile of its own is judged as a pin, which is no small landing pad: worth saying.
        List<string> notes = [.. picked.Notes, .. known.Notes.Skip(picked.State.Pads[pad].Joint is null ? 0 : 1), .. solder.Notes];
        if (with is null)
        {
            notes.Add(WireWords.AssumedSolder(UsualSolder));
        }

        Temperature most = workshop.Workshop.Planning.Limits.MostPadTemperature.Value;
        notes.Add(WireWords.PadLimit(Numerals.Celsius(most, 0)));
        UsualTools usual = new();
        ContactState contact = usual.ContactOr(null);
        _ = usual.SideOr(null, workshop.SiteOf(picked.State, pad, known).Joint);
        notes.AddRange(usual.Sentences);
        IReadOnlyList<WireTouch> touches = new WireTouchSearch(workshop.Bench).Of(
            workshop.Account(picked.State, pad, known), solder.Fractions, Candidates(workshop, contact, heat), board, most, shell.Cancellation);
        WirePlanView view = new(pad, touches, notes);
        return touches.Count > 0 ? new Reply.Answered(view) : new Reply.AnsweredNo(view);
    }

    // A heater that cannot be simulated would fail every iron, and the irons would get the blame.
    private static string? HeaterFault(ToolSetting.Preheater? heat, IReadOnlyDictionary<string, Preheater> known) =>
        heat is not { Profile: { } name } ? null
        : !known.TryGetValue(name, out Preheater? heater) ? Refusals.UnknownName("--preheater", name, known.Keys)
        : heat.Set > heater.MostSetting ? Refusals.OutOfLimits("--preheat-set", heat.Set.DegreesCelsius, LeastPreheatC, heater.MostSetting.DegreesCelsius, "°C")
        : null;

    private static IEnumerable<IReadOnlyList<ToolSetting>> Candidates(JobWorkshop workshop, ContactState contact, ToolSetting.Preheater? heat)
    {
        foreach ((string name, Iron iron) in workshop.Workshop.Profiles.Irons)
        {
            double most = Math.Min(MostC, iron.MostSetting.DegreesCelsius);
            for (double set = Math.Max(LeastC, iron.LeastSetting.DegreesCelsius); set <= most; set += StepK)
            {
                ToolSetting.Iron tool = new(name, Temperature.FromDegreesCelsius(set), contact);
                yield return heat is null ? [tool] : [tool, heat];
            }
        }
    }
}
