namespace ReworkThermal.App.Screens.Canvas;

/// <summary>A share of 0 to 1 as a bar of fixed length; beyond 1 it ends in a mark of its own.</summary>
internal static class ShareBar
{
    internal static string Of(double share, int length, bool plain)
    {
        if (share > 1)
        {
            return new string(plain ? '#' : '█', length - 1) + (plain ? '>' : '▶');
        }

        int full = (int)Math.Round(Math.Clamp(share, 0, 1) * length);
        return new string(plain ? '#' : '█', full) + new string(plain ? '.' : '░', length - full);
    }
}
