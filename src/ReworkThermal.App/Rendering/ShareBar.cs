namespace ReworkThermal.App.Rendering;

/// <summary>A share of a limit as a bar of characters, so that colour is not needed.</summary>
internal static class ShareBar
{
    private const int Cells = 12;

    /// <summary>Draws a bar: '#' up to the central share, '~' up to the unfavourable end, '!' in place of the last cell past the limit.</summary>
    /// <param name="central">Central share; 1 is the limit.</param>
    /// <param name="high">Share at the unfavourable end.</param>
    /// <returns>The bar in brackets.</returns>
    internal static string Of(double central, double high)
    {
        int solid = CellsOf(central);
        int doubtful = Math.Max(solid, CellsOf(high));
        string bar = new string('#', solid) + new string('~', doubtful - solid) + new string('.', Cells - doubtful);
        return "[" + (high >= 1 ? bar[..^1] + "!" : bar) + "]";
    }

    private static int CellsOf(double share) => Math.Clamp((int)Math.Ceiling((share * Cells) - 1e-9), 0, Cells);
}
