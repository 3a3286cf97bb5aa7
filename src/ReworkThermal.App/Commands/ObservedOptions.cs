using System.CommandLine;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Data.Calibrations;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>Options that describe an observed touch.</summary>
internal sealed class ObservedOptions
{
    private const double LeastSeconds = 0.1;
    private const double MostSeconds = 120;

    private readonly Option<string> _iron = new("--iron") { Description = HelpText.ObservedIron, HelpName = "iron", Required = true };
    private readonly Option<double?> _set = Numbers.Option("--set", HelpText.ObservedSet, 150, 480, "°C");
    private readonly Option<string?> _preheater = new("--preheater") { Description = HelpText.ObservedPreheater, HelpName = "preheater" };
    private readonly Option<double?> _board = Numbers.Option("--board", HelpText.ObservedBoard, 30, 200, "°C");
    private readonly Option<string?> _solder = new("--solder") { Description = HelpText.ObservedSolder, HelpName = "solder" };
    private readonly Option<string?> _with = new("--with") { Description = HelpText.ObservedWith, HelpName = "alloy" };
    private readonly Option<double?> _added = Numbers.Option("--added", HelpText.ObservedAdded, 0.01, 500, "mg");
    private readonly Option<double?> _flowed = Numbers.Option("--flowed", HelpText.ObservedFlowed, LeastSeconds, MostSeconds, "s");
    private readonly Option<double?> _notFlowed = Numbers.Option("--not-flowed", HelpText.ObservedNotFlowed, LeastSeconds, MostSeconds, "s");
    private readonly Option<string?> _probe = new("--probe") { Description = HelpText.ObservedProbe(CalibrationDesk.Probes), HelpName = "place" };
    private readonly Option<double?> _after = Numbers.Option("--after", HelpText.ObservedAfter, LeastSeconds, MostSeconds, "s");
    private readonly Option<double?> _reading = Numbers.Option("--reading", HelpText.ObservedReading, 0, 450, "°C");

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        _set.Required = true;
        foreach (Option option in new Option[] { _iron, _set, _preheater, _board, _solder, _with, _added, _flowed, _notFlowed, _probe, _after, _reading })
        {
            command.Add(option);
        }
    }

    /// <summary>Reads them.</summary>
    /// <returns>The wish, or what is wrong with it.</returns>
    internal (ObservedWish? Wish, string? Fault) Read(ParseResult parse)
    {
        if ((parse.GetValue(_preheater) is null) != (parse.GetValue(_board) is null))
        {
            return (null, CalibrationWords.PreheaterAndBoard);
        }

        if ((parse.GetValue(_with) is null) != (parse.GetValue(_added) is null))
        {
            return (null, CalibrationWords.AlloyAndMass);
        }

        if (parse.GetValue(_probe) is null && (parse.GetValue(_after) is not null || parse.GetValue(_reading) is not null))
        {
            return (null, CalibrationWords.ReadingNeedsProbe);
        }

        (Sighting? seen, string? fault) = Seen(parse);
        return seen is null
            ? (null, fault)
            : (new ObservedWish(
                parse.GetRequiredValue(_iron),
                parse.GetValue(_set)!.Value,
                parse.GetValue(_preheater),
                parse.GetValue(_board),
                parse.GetValue(_solder),
                parse.GetValue(_with),
                parse.GetValue(_added),
                seen), null);
    }

    private (Sighting? Seen, string? Fault) Seen(ParseResult parse)
    {
        double? flowed = parse.GetValue(_flowed);
        double? not = parse.GetValue(_notFlowed);
        string? probe = parse.GetValue(_probe);
        if (new[] { flowed is not null, not is not null, probe is not null }.Count(g => g) != 1)
        {
            return (null, CalibrationWords.OneSighting);
        }

        if (flowed is { } time)
        {
            return (new Sighting.Flowed(Duration.FromSeconds(time)), null);
        }

        if (not is { } waited)
        {
            return (new Sighting.NotFlowed(Duration.FromSeconds(waited)), null);
        }

        if (!CalibrationDesk.Probes.Contains(probe, StringComparer.Ordinal))
        {
            return (null, Refusals.UnknownName("--probe", probe!, CalibrationDesk.Probes));
        }

        return parse.GetValue(_after) is { } after && parse.GetValue(_reading) is { } reading
            ? (new Sighting.Reading(probe!, Duration.FromSeconds(after), Temperature.FromDegreesCelsius(reading)), null)
            : (null, CalibrationWords.ProbeNeedsReading);
    }
}
