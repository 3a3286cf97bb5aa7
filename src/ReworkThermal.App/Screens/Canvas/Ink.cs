namespace ReworkThermal.App.Screens.Canvas;

/// <summary>What a piece of text is, not how it looks; <see cref="Running.Palette"/> decides that. No meaning hangs on it alone.</summary>
internal enum Ink
{
    /// <summary>Ordinary text.</summary>
    Plain,

    /// <summary>Labels, units, rules: less important than what they belong to.</summary>
    Quiet,

    /// <summary>Figures and words that matter most.</summary>
    Strong,

    /// <summary>Headings.</summary>
    Heading,

    /// <summary>The row or place that keys act on.</summary>
    Chosen,

    /// <summary>Text being typed.</summary>
    Entry,

    /// <summary>As it should be.</summary>
    Good,

    /// <summary>Take care.</summary>
    Care,

    /// <summary>Stop, or wrong.</summary>
    Alarm,

    /// <summary>Stop, to be seen from across the bench.</summary>
    LoudAlarm,

    /// <summary>The line of a plot.</summary>
    Trace,
}
