using ReworkThermal.Core.Evidence;

namespace ReworkThermal.Core.Verification;

/// <summary>One published figure to compare with.</summary>
/// <param name="Area">What it is about.</param>
/// <param name="Table">Reference table it stands in.</param>
/// <param name="Line">Line of the table; 0 for a figure listed in a data file of the thermodynamic systems.</param>
/// <param name="Subject">What was measured or computed, in words.</param>
/// <param name="Unit">Unit of the figure as printed; empty for a bare number.</param>
/// <param name="Value">The figure.</param>
/// <param name="Below">How far below it the computed figure may lie, in the same unit.</param>
/// <param name="Above">How far above it the computed figure may lie, in the same unit.</param>
/// <param name="Provenance">Source and how it was met.</param>
/// <param name="Remark">Why the room is what it is, or why the row is for information only; may be empty.</param>
public sealed record PublishedValue(
    VerificationArea Area,
    string Table,
    int Line,
    string Subject,
    string Unit,
    double Value,
    double Below,
    double Above,
    Provenance Provenance,
    string Remark);
