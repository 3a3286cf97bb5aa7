using System.CommandLine;
using System.Globalization;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Reports;
using ReworkThermal.Data.Measurements;
using UnitsNet;
using ToolSetting = ReworkThermal.Core.Jobs.ToolSetting;

namespace ReworkThermal.App.Commands;

/// <summary>
/// The command <c>touch log</c>: seconds and settings, whose temperature is simulated with the joint on its board, or a measured
/// series, which is used as it is.
/// </summary>
/// <param name="shell">Streams, data, clock.</param>
/// <param name="options">Options of all job commands.</param>
internal sealed class TouchLogCommand(Shell shell, JobOptions options)
{
    private const double MostSeconds = 3600;

    private static readonly Dictionary<string, bool> _yesNo = new(StringComparer.Ordinal) { ["yes"] = true, ["no"] = false };

    private readonly Option<string?> _pads = PadNames.Option(HelpText.Pads, isRequired: true);
    private readonly Option<TouchPurpose?> _purpose = Choice.Option("--purpose", HelpText.Purpose, Vocabulary.Purposes);
    private readonly Option<double?> _seconds = Numbers.Option("--seconds", HelpText.Seconds, 0.05, MostSeconds, "s");
    private readonly TouchToolOptions _tools = new();
    private readonly Option<string?> _added = new("--added") { Description = HelpText.Added, HelpName = "alloy" };
    private readonly Option<double?> _addedMass = Numbers.Option("--added-mass", HelpText.AddedMass, 0, 100_000, "mg");
    private readonly Option<string?> _mix = new("--mix") { Description = HelpText.Mix, HelpName = "composition" };
    private readonly Option<bool?> _melted = Choice.Option("--melted", HelpText.Melted, _yesNo);
    private readonly Option<string?> _series = new("--series") { Description = HelpText.Series, HelpName = "file" };
    private readonly Option<string?> _at = new("--at") { Description = HelpText.At, HelpName = "time" };
    private readonly Option<int?> _ends = new("--ends") { Description = HelpText.Ends, HelpName = "entry" };
    private readonly Option<string?> _note = new("--note") { Description = HelpText.Note, HelpName = "text" };

    /// <summary>Defines the command.</summary>
    internal Command Define()
    {
        Command command = new("log", HelpText.TouchLog) { _pads, _purpose, _seconds };
        _tools.AddTo(command);
        foreach (Option option in (Option[])[_added, _addedMass, _mix, _melted, _series, _at, _ends, _note])
        {
            command.Add(option);
        }

        command.SetAction(parse => options.OnJob(parse, shell, (access, picked) => Answer(parse, access, picked)));
        return command;
    }

    private Reply Answer(ParseResult parse, JobAccess access, JobPick.Picked picked)
    {
        if (PadNames.Read(parse.GetValue(_pads), out IReadOnlyList<PadId> pads) is { } badPads)
        {
            return new Reply.Misused(badPads);
        }

        if (_tools.Read(parse, out IReadOnlyList<ToolSetting> tools) is { } badTools)
        {
            return new Reply.Misused(badTools);
        }

        if (parse.GetValue(_purpose) is not { } purpose)
        {
            return new Reply.Misused(TouchWords.PurposeNeeded);
        }

        if (tools.Count == 0)
        {
            return new Reply.Misused(TouchWords.ToolNeeded);
        }

        TemperatureHistory? measured = parse.GetValue(_series) is { } file ? SeriesCsv.Read(UserFiles.Read(file), file) : null;
        double? seconds = parse.GetValue(_seconds) ?? (measured is null ? null : Math.Max(0.05, measured.Seconds[^1]));
        if (seconds is not { } dwell)
        {
            return new Reply.Misused(TouchWords.SecondsNeeded);
        }

        if (StartOf(parse, dwell, out DateTimeOffset startedAt) is { } badTime)
        {
            return new Reply.Misused(badTime);
        }

        Exposure touch = new(
            purpose,
            tools,
            startedAt,
            Duration.FromSeconds(dwell),
            [.. pads.Select(p => new HeatedPad(p, Touched: true, parse.GetValue(_melted), measured is null ? null : InterfaceSeries.Measured(measured)))],
            AddedOf(parse),
            parse.GetValue(_mix),
            _tools.Board(parse),
            parse.GetValue(_note));
        return Log(parse, access, picked, touch);
    }

    private Reply Log(ParseResult parse, JobAccess access, JobPick.Picked picked, Exposure touch)
    {
        JobWorkshop workshop = new(shell, _tools.Contact(parse));
        if (UnreadableAlloy(touch, workshop) is { } unreadable)
        {
            return new Reply.Misused(unreadable);
        }

        // What cannot be recorded need not be simulated.
        if (JobRules.Judge(picked.State, new JobEvent.ExposureLogged(touch, parse.GetValue(_ends))) is EventVerdict.Refused refused)
        {
            return new Reply.Misused(JobWords.NotRecorded(refused.Reason));
        }

        List<string> notes = [.. picked.Notes];
        JobSite where = workshop.SiteOf(picked.State.Brief);
        if (where is JobSite.Known known)
        {
            if (touch.Pads[0].Series is null)
            {
                if (Simulated(workshop, known, picked.State, touch, notes) is not { } simulated)
                {
                    return new Reply.Misused(TouchWords.NotSimulated(notes[^1]));
                }

                touch = simulated;
            }
        }
        else
        {
            notes.Add(TouchWords.LoggedOnly(((JobSite.Unknown)where).Reason));
        }

        return access.Desk.Record(picked.State.Id, new JobEvent.ExposureLogged(touch, parse.GetValue(_ends))) switch
        {
            RecordOutcome.Recorded recorded => new Reply.Answered(new TouchLoggedView(
                recorded.Entry,
                recorded.State,
                where is JobSite.Known judged ? Costs(workshop, judged, picked.State, recorded.State, touch) : [],
                notes)),
            RecordOutcome.Refused late => new Reply.Misused(JobWords.NotRecorded(late.Reason)),
            _ => throw new InvalidOperationException("the job has gone"),
        };
    }

    private Exposure? Simulated(JobWorkshop workshop, JobSite.Known known, JobState state, Exposure touch, List<string> notes)
    {
        PadReplay replay = new(workshop.Bench);
        List<HeatedPad> pads = [];
        foreach (HeatedPad share in touch.Pads)
        {
            PadAccount account = workshop.Account(state, share.Pad, known);
            SolderCharge solder = replay.SolderDuring(account, touch);
            switch (workshop.Bench.Simulate(account.Site, touch.Tools, touch.BoardAtStart, solder, touch.Dwell, shell.Cancellation))
            {
                case TouchSimulation.Completed done:
                    pads.Add(share with { Melted = share.Melted ?? done.Melted, Series = InterfaceSeries.Simulated(done.Pad) });
                    notes.Add(TouchWords.Simulated(share.Pad, solder.Fractions.ToString(), Numerals.Celsius(done.Flow, 0), done.TimeToFlow is { } time ? Numerals.Seconds(time) : null));
                    notes.AddRange(done.Warnings.Concat(done.Notes).Where(n => !notes.Contains(n, StringComparer.Ordinal)));
                    break;
                case TouchSimulation.Failed failed:
                    notes.Add(failed.Reason);
                    return null;
                default:
                    throw new InvalidOperationException("unknown kind of simulation");
            }
        }

        return touch with { Pads = pads };
    }

    private static List<PadCost> Costs(JobWorkshop workshop, JobSite.Known known, JobState before, JobState after, Exposure touch) =>
        [.. touch.Pads.Select(p => new PadCost(workshop.Account(before, p.Pad, known).Budget, workshop.Account(after, p.Pad, known)))];

    private static string? UnreadableAlloy(Exposure touch, JobWorkshop workshop)
    {
        foreach ((string option, string? text) in ((string, string?)[])[("--added", touch.Added?.Designation), ("--mix", touch.Mix)])
        {
            if (text is not null && workshop.Melting.Alloys.Find(text) is DesignationReading.Refused refused)
            {
                return $"{option}: {refused.Reason}";
            }
        }

        return touch is { Purpose: TouchPurpose.Mix, Added.Mass: null } && touch.Added is not null && touch.Mix is null ? TouchWords.MassNeeded : null;
    }

    private AddedSolder? AddedOf(ParseResult parse) => parse.GetValue(_added) is { } alloy
        ? new AddedSolder(alloy, parse.GetValue(_addedMass) is { } mg ? Mass.FromMilligrams(mg) : null)
        : null;

    private string? StartOf(ParseResult parse, double seconds, out DateTimeOffset startedAt)
    {
        startedAt = shell.Clock.GetUtcNow().AddSeconds(-seconds);
        return parse.GetValue(_at) is { } text
            && !DateTimeOffset.TryParseExact(
                text,
                ["yyyy-MM-dd'T'HH:mmK", "yyyy-MM-dd'T'HH:mm:ssK", "yyyy-MM-dd'T'HH:mm:ss.fffK"],
                CultureInfo.InvariantCulture,
                DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal,
                out startedAt)
            ? TouchWords.BadTime(text)
            : null;
    }
}
