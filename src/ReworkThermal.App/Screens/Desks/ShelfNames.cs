namespace ReworkThermal.App.Screens.Desks;

/// <summary>Names to choose from, as the data folders give them.</summary>
internal sealed record ShelfNames(
    IReadOnlyList<string> Boards,
    IReadOnlyList<string> Joints,
    IReadOnlyList<string> Connectors,
    IReadOnlyList<string> Solders,
    IReadOnlyList<string> Dilutions,
    IReadOnlyList<string> Irons,
    IReadOnlyList<string> Contacts,
    IReadOnlyList<string> Preheaters,
    IReadOnlyList<string> Removals,
    IReadOnlyList<string> EarlierHeats);
