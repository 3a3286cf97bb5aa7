namespace ReworkThermal.Core.Verification;

/// <summary>The reference tables that the checks read.</summary>
/// <param name="Melting">Melting ranges of alloys.</param>
/// <param name="MixedJoints">How mixed joints end freezing.</param>
/// <param name="Density">Densities of solid solders.</param>
/// <param name="HeatFlow">Textbook problems of heat flow, in order of their cases.</param>
/// <param name="Joints">Joints run in three dimensions elsewhere, in order of their cases.</param>
/// <param name="Practice">Times to flow that practice expects.</param>
/// <param name="Delamination">Times to delamination.</param>
/// <param name="WorkedCases">Worked examples of the damage sum.</param>
/// <param name="CopperSolubility">Copper in molten solder.</param>
/// <param name="CopperRates">Rates of copper dissolution.</param>
/// <param name="Growth">Intermetallic growth and copper lost to liquid tin.</param>
/// <param name="Barrels">Strain and life of plated barrels.</param>
/// <param name="Wires">Wire gauges.</param>
public sealed record ReferenceTables(
    IReadOnlyList<ReferenceRow> Melting,
    IReadOnlyList<ReferenceRow> MixedJoints,
    IReadOnlyList<ReferenceRow> Density,
    IReadOnlyList<ReferenceRow> HeatFlow,
    IReadOnlyList<ReferenceRow> Joints,
    IReadOnlyList<ReferenceRow> Practice,
    IReadOnlyList<ReferenceRow> Delamination,
    IReadOnlyList<ReferenceRow> WorkedCases,
    IReadOnlyList<ReferenceRow> CopperSolubility,
    IReadOnlyList<ReferenceRow> CopperRates,
    IReadOnlyList<ReferenceRow> Growth,
    IReadOnlyList<ReferenceRow> Barrels,
    IReadOnlyList<ReferenceRow> Wires);
