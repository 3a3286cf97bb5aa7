namespace ReworkThermal.App.Screens.Canvas;

/// <summary>A rectangle of the screen [places].</summary>
internal readonly record struct Area(int Left, int Top, int Width, int Height)
{
    internal int Right => Left + Width;

    internal int Bottom => Top + Height;

    /// <summary>The rows of this area from one on, at most so many.</summary>
    internal Area Rows(int from, int count = int.MaxValue) => new(Left, Top + from, Width, Math.Clamp(Height - from, 0, count));

    /// <summary>The columns of this area from one on, at most so many.</summary>
    internal Area Columns(int from, int count = int.MaxValue) => new(Left + from, Top, Math.Clamp(Width - from, 0, count), Height);
}
