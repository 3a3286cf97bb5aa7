namespace ReworkThermal.App.Screens.Canvas;

/// <summary>A rectangle of the screen [places].</summary>
internal readonly record struct Area(int Left, int Top, int Width, int Height)
{
    internal int Right => Left + Width;

    internal int Bottom => Top + Height;

    /// <summary>The rows of this area from one on, at most so many.</summary>
    internal Area Rows(int from, int count = int.MaxValue) => new(Left, Top + from, Width, Part(Height - from, count));

    /// <summary>The columns of this area from one on, at most so many.</summary>
    internal Area Columns(int from, int count = int.MaxValue) => new(Left + from, Top, Part(Width - from, count), Height);

    // On a small terminal nothing may be left for a part: it is empty, and what is put there is not seen.
    private static int Part(int left, int count) => Math.Max(0, Math.Min(left, count));
}
