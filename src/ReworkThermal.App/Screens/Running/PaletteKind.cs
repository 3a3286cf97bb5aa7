namespace ReworkThermal.App.Screens.Running;

/// <summary>Sets of colours.</summary>
internal enum PaletteKind
{
    /// <summary>For a dark background.</summary>
    Dark,

    /// <summary>For a light background.</summary>
    Light,

    /// <summary>No colour at all: weight, underline and reverse only.</summary>
    Colourless,
}
