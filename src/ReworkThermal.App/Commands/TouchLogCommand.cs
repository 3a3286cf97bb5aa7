using System.CommandLine;
using System.Globalization;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Data;
using ReworkThermal.Data.Measurements;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>touch log</c>: reads the words of a touch; <see cref="TouchLogging"/> does the rest.</summary>
/// <param name="shell">Streams, data, clock.</param>
/// <param name="options">Options of all job commands.</param>
internal sealed class TouchLogCommand(Shell shell, JobOptions options)
{
    private const double MostSeconds = 3600;

    private static readonly Dictionary<string, bool> _yesNo = new(StringComparer.Ordinal) { ["yes"] = true, ["no"] = false };

    private readonly Option<string?> _pads = PadNames.Option(HelpText.Pads, isRequired: true);
    private readonly Option<TouchPurpose?> _purpose = Choice.Option<TouchPurpose>("--purpose", HelpText.Purpose);
    private readonly Option<double?> _seconds = Numbers.Option("--seconds", HelpText.Seconds, 0.05, MostSeconds, "s");
    private readonly TouchToolOptions _tools = new();
    private readonly Option<string?> _added = new("--added") { Description = HelpText.Added, HelpName = "alloy" };
    private readonly Option<double?> _addedMass = Numbers.Option("--added-mass", HelpText.AddedMass, 0, 100_000, "mg");
    private readonly Option<string?> _mix = new("--mix") { Description = HelpText.Mix, HelpName = "composition" };
    private readonly Option<bool?> _melted = Choice.Option("--melted", HelpText.Melted, _yesNo);
    private readonly Option<string?> _series = FilePaths.Option("--series", HelpText.Series);
    private readonly Option<string?> _at = new("--at") { Description = HelpText.At, HelpName = "time" };
    private readonly Option<int?> _ends = Numbers.WholeOption("--ends", HelpText.Ends, 1, Numbers.MostEntries);
    private readonly Option<string?> _note = CommonOptions.Note();

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

        if (_tools.Read(parse, out ToolUse use) is { } badTools)
        {
            return new Reply.Misused(badTools);
        }

        if (parse.GetValue(_purpose) is not { } purpose)
        {
            return new Reply.Misused(TouchWords.PurposeNeeded);
        }

        if (use.Tools.Count == 0)
        {
            return new Reply.Misused(TouchWords.ToolNeeded);
        }

        if (parse.GetValue(_addedMass) is not null && parse.GetValue(_added) is null)
        {
            return new Reply.Misused(TouchWords.AlloyNeeded);
        }

        TemperatureHistory? measured = parse.GetValue(_series) is { } file ? SeriesCsv.Read(InputFile.ReadText(file, InputFile.MostSeries), file) : null;
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
            use.Tools,
            startedAt,
            Duration.FromSeconds(dwell),
            [.. pads.Select(p => new HeatedPad(p, Touched: true, parse.GetValue(_melted), measured is null ? null : InterfaceSeries.Measured(measured)))],
            AddedOf(parse),
            parse.GetValue(_mix),
            use.BoardAtStart,
            parse.GetValue(_note),
            use.Side);
        return new TouchLogging(shell, new JobWorkshop(shell)).Log(access, picked, new JobEvent.ExposureLogged(touch, parse.GetValue(_ends)));
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
