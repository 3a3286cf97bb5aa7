using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Reports.Plans;
using UnitsNet;

namespace ReworkThermal.Core.Reports.Solders;

/// <summary>Turns dilutions into answers.</summary>
/// <param name="melting">Reports on melting.</param>
/// <param name="wireFor">The wire that an alloy comes in; null when it does not come as wire.</param>
public sealed class DilutionReporting(MeltReporting melting, Func<Alloy, SolderWire?> wireFor)
{
    /// <summary>One alloy in one amount.</summary>
    /// <param name="choice">The mix.</param>
    /// <param name="sources">Citations of the melting data used.</param>
    /// <returns>The line.</returns>
    public DilutionLine Line(DilutionChoice choice, IReadOnlyList<string> sources)
    {
        ArgumentNullException.ThrowIfNull(choice);
        return new DilutionLine(
            choice.Alloy.Name,
            choice.Share.DecimalFractions,
            choice.Added,
            wireFor(choice.Alloy) is { } wire ? wire.LengthFor(choice.Added) : (Length?)null,
            melting.Computed(choice.Melting, choice.Freezing, [], sources),
            choice.Hazards);
    }

    /// <summary>Alloys that were left out.</summary>
    /// <param name="excluded">The alloys.</param>
    /// <returns>One line each.</returns>
    public static IReadOnlyList<RuledOut> LeftOut(IEnumerable<ExcludedAlloy> excluded) =>
        [.. excluded.Select(e => new RuledOut(e.Name, e.Reason))];
}
