using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Tools;

namespace ReworkThermal.Data.Toml;

/// <summary>Words that several kinds of files use for the same thing.</summary>
internal static class BenchWords
{
    /// <summary>Faces of a board.</summary>
    internal static readonly IReadOnlyDictionary<string, BoardSide> Sides = new Dictionary<string, BoardSide>(StringComparer.Ordinal)
    {
        ["top"] = BoardSide.Top,
        ["bottom"] = BoardSide.Bottom,
    };

    /// <summary>Words of the flux at a joint.</summary>
    private static readonly Dictionary<string, FluxState> _fluxes = new(StringComparer.Ordinal)
    {
        ["fresh"] = FluxState.Fresh,
        ["spent"] = FluxState.Spent,
    };

    /// <summary>The field <c>flux</c>: fresh when it is left out.</summary>
    internal static FluxState FluxIn(FieldReader table) => table.Has("flux") ? table.OneOf("flux", _fluxes) : FluxState.Fresh;

    /// <summary>States of the contact of tip and joint.</summary>
    internal static readonly IReadOnlyDictionary<string, ContactState> Contacts = new Dictionary<string, ContactState>(StringComparer.Ordinal)
    {
        ["bare"] = ContactState.Bare,
        ["tinned"] = ContactState.Tinned,
        ["flooded"] = ContactState.Flooded,
    };

    /// <summary>The word for a member of one of these lists.</summary>
    internal static string WordFor<T>(this IReadOnlyDictionary<string, T> words, T member)
        where T : struct, Enum => words.First(w => EqualityComparer<T>.Default.Equals(w.Value, member)).Key;
}
