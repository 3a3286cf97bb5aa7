using ReworkThermal.App.Screens.State;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Typing into the text field. Escape gives the field up, Enter hands it over; nothing else leaves it.</summary>
internal static class EntryUpdate
{
    internal static Step Apply(BenchState state, Press press)
    {
        TextEntry entry = state.Entry ?? throw new InvalidOperationException("no text is being typed");
        if (entry.Waiting)
        {
            return new Step(state with { Held = state.Held.Add(press) });
        }

        return press.Kind switch
        {
            PressKind.Enter => EntryCommit.Commit(state, entry),
            PressKind.Escape => new Step(state with { Entry = (entry.For as EntryFor.StorePath)?.Waits, Notice = Notice.None }),
            _ => new Step(state with { Entry = Edited(entry, press) }),
        };
    }

    internal static Step Pasted(BenchState state, string text) =>
        new(state.Entry is { Waiting: false } entry ? state with { Entry = entry.Insert(text) } : state);

    private static TextEntry Edited(TextEntry entry, Press press) => press.Kind switch
    {
        PressKind.Character => entry.Insert(press.Character.ToString()),
        PressKind.Backspace when entry.Caret > 0 => entry.Without(entry.Beside(-1), entry.Caret),
        PressKind.Delete when entry.Caret < entry.Text.Length => entry.Without(entry.Caret, entry.Beside(1)),
        PressKind.Empty => entry.Without(0, entry.Text.Length),
        PressKind.Left => entry with { Caret = entry.Beside(-1) },
        PressKind.Right => entry with { Caret = entry.Beside(1) },
        PressKind.Home => entry with { Caret = 0 },
        PressKind.End => entry with { Caret = entry.Text.Length },
        PressKind.Up => entry.Stepped(-1),
        PressKind.Down => entry.Stepped(1),
        _ => entry,
    };
}
