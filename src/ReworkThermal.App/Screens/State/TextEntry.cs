namespace ReworkThermal.App.Screens.State;

/// <summary>A text being typed. A complaint never takes the text away.</summary>
/// <param name="For">What it is for.</param>
/// <param name="Label">What is asked.</param>
/// <param name="Text">The text so far.</param>
/// <param name="Caret">Characters before the caret.</param>
/// <param name="Options">Texts to step through with the arrow keys; may be empty.</param>
/// <param name="Complaint">What is wrong with it, or null.</param>
/// <param name="Waiting">Whether it was handed to the store and the answer is due.</param>
internal sealed record TextEntry(
    EntryFor For,
    string Label,
    string Text,
    int Caret,
    IReadOnlyList<string> Options,
    string? Complaint = null,
    bool Waiting = false)
{
    /// <summary>What a text may look like; shown below the field while there is no complaint.</summary>
    internal string Hint { get; init; } = string.Empty;

    /// <summary>The text that stood there when the field was opened.</summary>
    internal string Before { get; init; } = string.Empty;

    /// <summary>Longest text that can be typed [UTF-16 units].</summary>
    internal const int Longest = 2000;

    internal static TextEntry Of(EntryFor purpose, string label, string text = "", IReadOnlyList<string>? options = null) =>
        new(purpose, label, text, text.Length, options ?? []) { Before = text };

    internal TextEntry Insert(string typed)
    {
        string clean = new([.. typed.Where(c => !char.IsControl(c))]);
        return Text.Length + clean.Length > Longest
            ? this
            : this with { Text = Text.Insert(Caret, clean), Caret = Caret + clean.Length, Complaint = null };
    }

    internal TextEntry Without(int from, int to) => this with { Text = Text.Remove(from, to - from), Caret = from, Complaint = null };

    internal TextEntry Stepped(int by)
    {
        if (Options.Count == 0)
        {
            return this;
        }

        int at = Options.ToList().IndexOf(Text);
        string next = Options[at < 0 ? (by > 0 ? 0 : Options.Count - 1) : (at + by + Options.Count) % Options.Count];
        return this with { Text = next, Caret = next.Length, Complaint = null };
    }

    /// <summary>Where the character before or after the caret begins or ends, whole surrogate pairs.</summary>
    internal int Beside(int direction)
    {
        int at = Math.Clamp(Caret + direction, 0, Text.Length);
        return at > 0 && at < Text.Length && char.IsLowSurrogate(Text[at]) ? at + direction : at;
    }
}
