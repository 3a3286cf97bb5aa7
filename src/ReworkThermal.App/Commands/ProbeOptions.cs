using System.CommandLine;
using System.Globalization;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs.Checking;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>Options that say which checks were probed and what the meter showed.</summary>
internal sealed class ProbeOptions
{
    private readonly Option<string?> _number = new("--number") { Description = HelpText.CheckNumber, HelpName = "n[-m][,...]" };
    private readonly Option<double?> _ohms = Numbers.Option("--ohms", HelpText.Ohms, 0, AskLimits.MostOhms, "ohm");
    private readonly Option<bool> _overRange = new("--over-range") { Description = HelpText.OverRange };
    private readonly Option<string?> _note = CommonOptions.Note();

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Add(_number);
        command.Add(_ohms);
        command.Add(_overRange);
        command.Add(_note);
    }

    /// <summary>What was noted; null for nothing.</summary>
    internal string? Note(ParseResult parse) => parse.GetValue(_note);

    /// <summary>What the meter showed; null when it was not said.</summary>
    internal MeterReading? Reading(ParseResult parse) =>
        parse.GetValue(_overRange) ? new MeterReading.OverRange()
        : parse.GetValue(_ohms) is { } value ? new MeterReading.Shown(ElectricResistance.FromOhms(value))
        : null;

    /// <summary>Finds the checks that are meant: those named, or the next one to probe.</summary>
    /// <param name="parse">The command line.</param>
    /// <param name="checks">The check list.</param>
    /// <param name="lines">The checks; at least one when all is well.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal string? Lines(ParseResult parse, CheckProgress checks, out IReadOnlyList<CheckLine> lines)
    {
        lines = [];
        if (parse.GetValue(_overRange) && parse.GetValue(_ohms) is not null)
        {
            return ChecksWords.OneReading;
        }

        if (checks.Lines.Count == 0)
        {
            return ChecksWords.NoChecks;
        }

        if (parse.GetValue(_number) is not { } text)
        {
            lines = checks.Upcoming is { } next ? [next] : [];
            return lines.Count > 0 ? null : ChecksWords.AllProbed;
        }

        List<CheckLine> named = [];
        foreach (string part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            string[] ends = part.Split('-');
            if (ends.Length > 2 || !Read(ends[0], checks.Lines.Count, out int first) || !Read(ends[^1], checks.Lines.Count, out int last) || last < first)
            {
                return ChecksWords.NoSuchNumber(checks.Lines.Count);
            }

            named.AddRange(checks.Lines.Skip(first - 1).Take(last - first + 1));
        }

        lines = [.. named.Distinct()];
        return null;
    }

    private static bool Read(string text, int most, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number >= 1 && number <= most;
}
