using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Core.Reports;
using ReworkThermal.Data;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>plan REQUEST.toml</c>: the main job.</summary>
internal static class PlanCommand
{
    private const int LeastSamples = 10;

    private const int MostSamples = 10_000;

    /// <summary>Defines the command.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        Argument<string> path = new("request") { Description = HelpText.Request };
        Option<double?> samples = Numbers.Option("--samples", HelpText.Samples(PlanSampler.UsualSamples), 0, MostSamples, string.Empty);
        Command command = new("plan", HelpText.Plan) { path, samples };
        command.SetAction(parse => Front.Show(
            Answer(shell, parse.GetRequiredValue(path), (int)(parse.GetValue(samples) ?? PlanSampler.UsualSamples)),
            parse.GetValue(json),
            shell));
        return command;
    }

    private static Reply Answer(Shell shell, string path, int samples)
    {
        if (samples is > 0 and < LeastSamples)
        {
            return new Reply.Misused(Refusals.TooFewSamples(LeastSamples));
        }

        Workshop workshop = Workshop.Load(shell.Data);
        PlanRequest request = PlanRequestFile.Read(path, workshop);
        if (request.Site.Joint is not ThroughJoint)
        {
            return new Reply.Unusable(Refusals.InFile(path, Refusals.PlanNeedsThrough(request.JointName)));
        }

        MeltingShelf shelf = new(shell.Data);
        PlanOutcome outcome;
        using (ProgressLine progress = new(shell))
        {
            outcome = new PlanSearch(shelf.Engine, shelf.Alloys.Properties, workshop.Limits).Search(request, progress, shell.Cancellation);
        }

        if (samples > 0)
        {
            using ProgressLine progress = new(shell);
            outcome = new PlanSampler(shelf.Engine, shelf.Alloys.Properties, workshop.Limits).Sampled(request, outcome, samples, progress, shell.Cancellation);
        }

        PlanView view = new(PlanReporting.Of(request, outcome, SourcesFor(shell, shelf, request, outcome)));
        return outcome is PlanOutcome.Planned ? new Reply.Answered(view) : new Reply.AnsweredNo(view);
    }

    private static IReadOnlyList<string> SourcesFor(Shell shell, MeltingShelf shelf, PlanRequest request, PlanOutcome outcome)
    {
        IEnumerable<string> melting = outcome is PlanOutcome.Planned planned
            ? planned.Plans.SelectMany(p => shelf.SourcesFor(p.Melting.Composition))
            : shelf.SourcesFor(request.BaseSolder.Fractions);
        IEnumerable<string> bench = Citations.Of(
            Directory.EnumerateFiles(shell.Data.Profiles, "*.toml", SearchOption.AllDirectories).Order(StringComparer.Ordinal),
            Bibliography.Load(Path.Combine(shell.Data.Profiles, "sources.toml")));
        return [.. melting.Concat(bench).Distinct(StringComparer.Ordinal)];
    }
}
