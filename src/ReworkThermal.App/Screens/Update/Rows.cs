namespace ReworkThermal.App.Screens.Update;

/// <summary>Moves along rows.</summary>
internal static class Rows
{
    private const int Page = 10;

    /// <summary>Row after a key, or null when the key does not move.</summary>
    internal static int? After(int row, int count, Press press)
    {
        int? wanted = press.Kind switch
        {
            PressKind.Up => row - 1,
            PressKind.Down => row + 1,
            PressKind.PageUp => row - Page,
            PressKind.PageDown => row + Page,
            PressKind.Home => 0,
            PressKind.End => count - 1,
            _ => null,
        };
        return wanted is int next ? Math.Clamp(next, 0, Math.Max(0, count - 1)) : null;
    }
}
