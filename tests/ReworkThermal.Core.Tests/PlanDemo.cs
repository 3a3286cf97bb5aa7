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

    public static Workshop Workshop => _workshop.Value;

    public static PlanRequest Request => _request.Value;

    public static PlanOutcome.Planned Planned => _planned.Value;

    public static PlanOutcome Search(PlanRequest request, CancellationToken cancellation = default) =>
        new PlanSearch(Shelf.Engine, Shelf.Alloys.Properties, Workshop.Limits).Search(request, null, cancellation);

    public static MeltingBehaviour Melting(string designation) =>
        Assert.IsType<MeltingOutcome.Found>(Shelf.Engine.MeltingOf(Shelf.Read(designation))).Behaviour;
}
