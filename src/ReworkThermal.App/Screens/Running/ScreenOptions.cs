namespace ReworkThermal.App.Screens.Running;

/// <summary>How the terminal UI is wanted.</summary>
/// <param name="Plain">ASCII drawing and no colour; text carries everything.</param>
/// <param name="Light">Colours for a light background.</param>
/// <param name="Store">File of the job store, or null for the usual place.</param>
/// <param name="Calibrations">Folder of the calibrations, or null for the usual place.</param>
internal sealed record ScreenOptions(bool Plain, bool Light, string? Store, string? Calibrations = null);
