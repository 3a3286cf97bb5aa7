namespace ReworkThermal.App.Screens.Desks;

/// <summary>Names to choose from, as the data folders give them.</summary>
/// <param name="Boards">Board profiles.</param>
/// <param name="Joints">Joint profiles.</param>
/// <param name="Connectors">Connector profiles.</param>
/// <param name="Solders">Solders of joints.</param>
/// <param name="Dilutions">Dilution alloys.</param>
/// <param name="Irons">Iron profiles.</param>
/// <param name="Nozzles">Hot-air nozzles.</param>
/// <param name="Preheaters">Preheater profiles.</param>
/// <param name="Removals">Ways of taking solder out.</param>
/// <param name="EarlierHeats">Assumptions about earlier heat.</param>
/// <param name="Rooms">Kinds of air around the bench.</param>
/// <param name="ToolIds">Profile of an iron, nozzle or preheater by the name it has in answers.</param>
internal sealed record ShelfNames(
    IReadOnlyList<string> Boards,
    IReadOnlyList<string> Joints,
    IReadOnlyList<string> Connectors,
    IReadOnlyList<string> Solders,
    IReadOnlyList<string> Dilutions,
    IReadOnlyList<string> Irons,
    IReadOnlyList<string> Nozzles,
    IReadOnlyList<string> Preheaters,
    IReadOnlyList<string> Removals,
    IReadOnlyList<string> EarlierHeats,
    IReadOnlyList<string> Rooms,
    IReadOnlyDictionary<string, string> ToolIds);
