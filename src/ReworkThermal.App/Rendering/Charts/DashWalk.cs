namespace ReworkThermal.App.Rendering.Charts;

/// <summary>Cuts a chain of lines into dashes; the pattern runs on around corners.</summary>
/// <param name="pattern">Lengths of dashes and gaps in turn [px], all above zero, an even number of them; empty for a full line.</param>
internal sealed class DashWalk(IReadOnlyList<double> pattern)
{
    private int _at;
    private double _left = pattern.Count > 0 ? pattern[0] : double.PositiveInfinity;

    /// <summary>Dashes of the next line of the chain.</summary>
    /// <param name="from">Where it starts.</param>
    /// <param name="to">Where it ends.</param>
    /// <returns>Pieces to draw.</returns>
    internal IEnumerable<(ChartPoint From, ChartPoint To)> Along(ChartPoint from, ChartPoint to)
    {
        double length = Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2));
        double done = 0;
        while (done < length)
        {
            double step = Math.Min(_left, length - done);
            if (_at % 2 == 0)
            {
                yield return (Between(from, to, done / length), Between(from, to, (done + step) / length));
            }

            done += step;
            _left -= step;
            if (_left <= 0)
            {
                _at = (_at + 1) % pattern.Count;
                _left = pattern[_at];
            }
        }

        if (length == 0)
        {
            yield return (from, to);
        }
    }

    private static ChartPoint Between(ChartPoint from, ChartPoint to, double share) =>
        new(from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)));
}
