using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Phases;
using ReworkThermal.Core.Planning;
using ReworkThermal.Data;
using ReworkThermal.Data.Requests;

namespace ReworkThermal.Core.Tests;

/// <summary>The shipped demo request (invented figures), read once, and its plans, searched once.</summary>
internal static class PlanDemo
{
    private static readonly Lazy<Workshop> _workshop = new(() => Workshop.Load(DataRoot.BesideProgram));
    private static readonly Lazy<PlanRequest> _request = new(() =>
        PlanRequestFile.Read(Path.Combine(DataRoot.BesideProgram.Profiles, "requests", "pump-controller-jack.toml"), _workshop.Value));

    private static readonly Lazy<PlanOutcome.Planned> _planned = new(() => Assert.IsType<PlanOutcome.Planned>(Search(_request.Value)));

    private static readonly Lazy<PlanOutcome.Planned> _plannedAssisted = new(() => Assert.IsType<PlanOutcome.Planned>(Search(Assisted)));

    /// <summary>
    /// The demo joint with nothing beside it and without a preheater, lead-free solder in it and for the refit: no iron alone melts it
    /// through, an iron after hot air does.
    /// </summary>
    public static PlanRequest Assisted => Request with
    {
        Site = new JointSite(Request.Site.Board, Request.Site.Joint, Request.Site.Connector, []),
        Refill = Request.BaseSolder,
        Bench = Request.Bench with
        {
            Irons = [Request.Bench.Irons[0]],
            Preheaters = [],
            Dilutions = [Shelf.Dilution("Bi58Sn42"), Shelf.Dilution("In52Sn48")],
        },
    };

    public static PlanOutcome.Planned PlannedAssisted => _plannedAssisted.Value;

    public static Workshop Workshop => _workshop.Value;

    public static PlanRequest Request => _request.Value;

    public static PlanOutcome.Planned Planned => _planned.Value;

    public static PlanOutcome Search(PlanRequest request, CancellationToken cancellation = default) =>
        new PlanSearch(Shelf.Engine, Shelf.Alloys.Properties, Workshop.Limits).Search(request, null, cancellation);

    public static MeltingBehaviour Melting(string designation) =>
        Assert.IsType<MeltingOutcome.Found>(Shelf.Engine.MeltingOf(Shelf.Read(designation))).Behaviour;
}
