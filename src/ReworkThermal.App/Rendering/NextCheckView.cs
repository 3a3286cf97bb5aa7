using System.Text.Json;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;

namespace ReworkThermal.App.Rendering;

/// <summary>What to probe next.</summary>
/// <param name="state">The job.</param>
/// <param name="limits">Limits of readings.</param>
/// <param name="notes">What was assumed, one sentence each.</param>
internal sealed class NextCheckView(JobState state, CheckLimits limits, IReadOnlyList<string> notes) : IRenderedReport
{
    /// <inheritdoc/>
    public void WriteText(Page page)
    {
        CheckProgress checks = state.Checks;
        page.Heading(ChecksWords.NextHeading);
        page.Paragraph(checks.Upcoming is { } line
            ? $"{NumberOf(line)}. {EventWords.Of(line.Check)}: {EventWords.Of(line.Expected)}"
            : checks.Proven ? ChecksWords.Proven : ChecksWords.NothingNext);
        page.Paragraph(JobWords.Coverage(checks.Passed, checks.Failed, checks.Open, checks.Stale) + ".");
        page.List(ChecksWords.SuspectsHeading, [.. checks.Suspects.Select(p => p.Value)]);
        page.List(CommonWords.Cautions, [ChecksWords.Caution]);
        page.List(CommonWords.Notes, [ChecksView.LimitsSentence(limits), .. notes]);
    }

    /// <inheritdoc/>
    public void WriteJson(Utf8JsonWriter json)
    {
        json.Text("job", state.Id.Value);
        if (state.Checks.Upcoming is { } line)
        {
            json.WriteStartObject("next");
            ChecksView.WriteLine(json, NumberOf(line), line);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("next");
        }

        json.WriteBoolean("proven", state.Checks.Proven);
        json.Sentences("suspect_pins", state.Checks.Suspects.Select(p => p.Value));
        ChecksView.WriteLimits(json, limits);
        json.Sentences("notes", notes);
    }

    private int NumberOf(CheckLine line) => state.Checks.Lines.TakeWhile(l => l != line).Count() + 1;
}
