using System.Globalization;
using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;

namespace ReworkThermal.App.Rendering;

/// <summary>How the check list of a job looks.</summary>
/// <param name="state">The job.</param>
/// <param name="limits">Limits of readings.</param>
/// <param name="notes">What was assumed, one sentence each.</param>
internal sealed class ChecksView(JobState state, CheckLimits limits, IReadOnlyList<string> notes) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        CheckProgress checks = state.Checks;
        page.Heading(JobWords.Title(state));
        page.Paragraph(checks.Lines.Count == 0 ? ChecksWords.NoChecks
            : checks.Proven ? ChecksWords.Proven
            : JobWords.Coverage(checks.Passed, checks.Failed, checks.Open, checks.Stale) + ".");
        if (checks.Lines.Count > 0)
        {
            page.Blank();
            page.Table(ChecksWords.Columns, [.. checks.Lines.Select((line, i) => Row(i + 1, line))]);
        }

        page.List(ChecksWords.SuspectsHeading, [.. checks.Suspects.Select(p => p.Value)]);
        page.List(CommonWords.Cautions, [ChecksWords.Caution]);
        page.List(CommonWords.Notes, [LimitsSentence(limits), .. notes]);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        CheckProgress checks = state.Checks;
        json.Text("job", state.Id.Value);
        json.WriteNumber("passed", checks.Passed);
        json.WriteNumber("failed", checks.Failed);
        json.WriteNumber("open", checks.Open);
        json.WriteNumber("stale", checks.Stale);
        json.WriteBoolean("proven", checks.Proven);
        json.WriteStartArray("checks");
        for (int i = 0; i < checks.Lines.Count; i++)
        {
            json.WriteStartObject();
            WriteLine(json, i + 1, checks.Lines[i]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Sentences("suspect_pins", checks.Suspects.Select(p => p.Value));
        WriteLimits(json, limits);
        json.Sentences("notes", notes);
    }

    /// <summary>Writes one check.</summary>
    internal static void WriteLine(Utf8JsonWriter json, int number, CheckLine line)
    {
        json.WriteNumber("number", number);
        json.Text("check", EventWords.Of(line.Check));
        json.Sentences("pins", line.Check.Probed.Select(p => p.Value));
        json.Text("expected", EventWords.Of(line.Expected));
        json.Text("standing", ChecksWords.Standing(line.Standing));
        json.Number("reading_ohm", line.Last?.What.Reading is MeterReading.Shown shown ? shown.Resistance.Ohms : null, 4);
        json.WriteBoolean("over_range", line.Last?.What.Reading is MeterReading.OverRange);
        json.Text("note", line.Last?.What.Note is { } note ? VisibleText.Of(note) : null);
    }

    /// <summary>Writes the limits of readings.</summary>
    internal static void WriteLimits(Utf8JsonWriter json, CheckLimits limits)
    {
        json.Number("continuity_at_most_ohm", limits.ContinuityAtMost.Central.Ohms, 3);
        json.Number("isolation_at_least_ohm", limits.IsolationAtLeast.Central.Ohms, 3);
    }

    /// <summary>The limits of readings in a sentence.</summary>
    internal static string LimitsSentence(CheckLimits limits) => ChecksWords.Limits(
        Numerals.Fixed(limits.ContinuityAtMost.Central.Ohms, 0),
        Numerals.Fixed(limits.IsolationAtLeast.Central.Ohms, 0));

    /// <summary>A check as a row under <see cref="ChecksWords.Columns"/>.</summary>
    internal static IReadOnlyList<string> Row(int number, CheckLine line) =>
    [
        number.ToString(CultureInfo.InvariantCulture),
        EventWords.Of(line.Check),
        EventWords.Of(line.Expected),
        ChecksWords.Standing(line.Standing),
        EventWords.Reading(line.Last?.What.Reading).Trim(' ', '(', ')'),
        VisibleText.Of(line.Last?.What.Note ?? string.Empty),
    ];
}
