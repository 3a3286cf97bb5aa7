using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>What is known of a system of two or three elements, as stated in its data file.</summary>
/// <param name="File">File name; the full path of a file of the user's own folder.</param>
/// <param name="Title">For example <c>Ag-Sn</c>.</param>
/// <param name="Elements">Two or three elements.</param>
/// <param name="Status">What the parameters rest on.</param>
/// <param name="UncertaintyKelvin">Uncertainty [K] of a melting temperature that leans fully on this system.</param>
/// <param name="Caveat">Sentence to print with every answer that leans on the system; null when there is none.</param>
/// <param name="ValidRange">Range of temperature and composition in which the parameters were assessed, in words.</param>
/// <param name="Limits">Composition limits that the program watches; empty when the parameters cover every composition.</param>
/// <param name="KnownDeviations">Known differences from measurement, in words.</param>
/// <param name="Invariants">Reactions that a check can recompute.</param>
/// <param name="FitPoints">Published points that this project's own parameters were fitted to; empty for published assessments.</param>
/// <param name="IsOwn">Whether the system comes from the user's own folder.</param>
public sealed record SystemDescription(
    string File,
    string Title,
    IReadOnlyList<Element> Elements,
    SystemStatus Status,
    double UncertaintyKelvin,
    string? Caveat,
    string ValidRange,
    IReadOnlyList<SystemLimit> Limits,
    IReadOnlyList<string> KnownDeviations,
    IReadOnlyList<ListedInvariant> Invariants,
    IReadOnlyList<FitPoint> FitPoints,
    bool IsOwn = false);
