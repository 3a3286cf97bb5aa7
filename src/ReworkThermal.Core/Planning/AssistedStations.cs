namespace ReworkThermal.Core.Planning;

/// <summary>Stations of an iron that hot air helps.</summary>
/// <param name="Stations">The stations.</param>
/// <param name="Nearest">When no air leaves time for an iron: the air that nearly did, and when it must stop.</param>
internal sealed record AssistedStations(IReadOnlyList<Station> Stations, (ToolSetting AirAlone, TouchEnd End)? Nearest);
