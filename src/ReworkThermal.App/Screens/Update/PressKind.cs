namespace ReworkThermal.App.Screens.Update;

/// <summary>Kinds of keys the screens know.</summary>
internal enum PressKind
{
    /// <summary>A character, the space too.</summary>
    Character,

    /// <summary>Enter.</summary>
    Enter,

    /// <summary>Escape.</summary>
    Escape,

    /// <summary>Arrow up.</summary>
    Up,

    /// <summary>Arrow down.</summary>
    Down,

    /// <summary>Arrow left.</summary>
    Left,

    /// <summary>Arrow right.</summary>
    Right,

    /// <summary>Page up.</summary>
    PageUp,

    /// <summary>Page down.</summary>
    PageDown,

    /// <summary>Home.</summary>
    Home,

    /// <summary>End.</summary>
    End,

    /// <summary>Tab.</summary>
    Tab,

    /// <summary>Backspace.</summary>
    Backspace,

    /// <summary>Delete.</summary>
    Delete,

    /// <summary>Ctrl+U: empties a text field.</summary>
    Empty,

    /// <summary>A digit with Alt: goes to a place even out of a text field.</summary>
    PlaceDigit,

    /// <summary>Ctrl+W: writes what cannot be saved elsewhere.</summary>
    Elsewhere,

    /// <summary>Ctrl+Q.</summary>
    Leave,
}
