namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>A phase of the model: a Gibbs energy as a function of temperature and composition.</summary>
/// <param name="Name">Name used in the data files, such as <c>BCT_A5</c>.</param>
/// <param name="ShownAs">What a reader calls it, such as "(Sn)" or "Cu6Sn5".</param>
/// <param name="IsLiquid">Whether this is the liquid.</param>
/// <param name="Sublattices">One (solution) or two (compound).</param>
/// <param name="EndMembers">One for each way to fill the sublattices.</param>
/// <param name="Pairs">Binary interactions; a pair that is not listed mixes ideally.</param>
/// <param name="Triples">Ternary interactions.</param>
public sealed record PhaseDescription(
    string Name,
    string ShownAs,
    bool IsLiquid,
    IReadOnlyList<Sublattice> Sublattices,
    IReadOnlyList<EndMember> EndMembers,
    IReadOnlyList<BinaryInteraction> Pairs,
    IReadOnlyList<TernaryInteraction> Triples);
