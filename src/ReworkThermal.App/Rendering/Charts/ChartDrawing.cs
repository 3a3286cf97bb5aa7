namespace ReworkThermal.App.Rendering.Charts;

/// <summary>Draws a chart on a canvas, the same on every kind.</summary>
internal static class ChartDrawing
{
    private const double TextSize = 13;

    private const double TitleSize = 16;

    private static readonly ChartPen _gridPen = new("#dddddd", 1, []);

    private static readonly ChartPen _axisPen = new("#000000", 1, []);

    private static readonly ChartPen _levelPen = new("#555555", 1, [1, 4]);

    /// <summary>Draws a chart.</summary>
    /// <param name="chart">The chart.</param>
    /// <param name="canvas">Where to draw; <see cref="ChartLayout"/> gives its size.</param>
    internal static void Draw(Chart chart, IChartCanvas canvas)
    {
        ChartLayout layout = new(chart);
        canvas.Text(chart.Title, new ChartPoint(ChartLayout.Left, 24), new ChartTextStyle(TitleSize, ChartAnchor.Start));
        DrawAxes(chart, layout, canvas);
        DrawLevels(chart, layout, canvas);
        DrawLines(chart, layout, canvas);
    }

    private static void DrawAxes(Chart chart, ChartLayout layout, IChartCanvas canvas)
    {
        foreach (double tick in layout.X.Ticks)
        {
            double x = layout.X.At(tick);
            canvas.Polyline([new(x, ChartLayout.Top), new(x, ChartLayout.Bottom)], _gridPen);
            canvas.Text(Numerals.Fixed(tick, layout.X.Digits), new ChartPoint(x, ChartLayout.Bottom + 18), new ChartTextStyle(TextSize, ChartAnchor.Middle));
        }

        foreach (double tick in layout.Y.Ticks)
        {
            double y = layout.Y.At(tick);
            canvas.Polyline([new(ChartLayout.Left, y), new(ChartLayout.Right, y)], _gridPen);
            canvas.Text(Numerals.Fixed(tick, layout.Y.Digits), new ChartPoint(ChartLayout.Left - 8, y + 4), new ChartTextStyle(TextSize, ChartAnchor.End));
        }

        canvas.Polyline(
            [new(ChartLayout.Left, ChartLayout.Top), new(ChartLayout.Left, ChartLayout.Bottom), new(ChartLayout.Right, ChartLayout.Bottom)],
            _axisPen);
        canvas.Text(
            chart.XAxis,
            new ChartPoint((ChartLayout.Left + ChartLayout.Right) / 2.0, ChartLayout.Height - 14),
            new ChartTextStyle(TextSize, ChartAnchor.Middle));
        canvas.Text(
            chart.YAxis,
            new ChartPoint(20, (ChartLayout.Top + ChartLayout.Bottom) / 2.0),
            new ChartTextStyle(TextSize, ChartAnchor.Middle, Upwards: true));
    }

    private static void DrawLevels(Chart chart, ChartLayout layout, IChartCanvas canvas)
    {
        for (int i = 0; i < chart.Levels.Count; i++)
        {
            double y = layout.Y.At(chart.Levels[i].Y);
            canvas.Polyline([new(ChartLayout.Left, y), new(ChartLayout.Right, y)], _levelPen);
            Label(chart.Levels[i].Name, layout.LabelPlaces[chart.Lines.Count + i], _levelPen, canvas);
        }
    }

    private static void DrawLines(Chart chart, ChartLayout layout, IChartCanvas canvas)
    {
        for (int i = 0; i < chart.Lines.Count; i++)
        {
            ChartPen pen = new(ChartLayout.ColourOf(i), 2, ChartLayout.DashesOf(i));
            canvas.Polyline([.. chart.Lines[i].Points.Select(p => new ChartPoint(layout.X.At(p.X), layout.Y.At(p.Y)))], pen);
            Label(chart.Lines[i].Name, layout.LabelPlaces[i], pen, canvas);
        }
    }

    private static void Label(string text, double y, ChartPen pen, IChartCanvas canvas)
    {
        canvas.Polyline([new(ChartLayout.Right + 8, y), new(ChartLayout.Right + 36, y)], pen);
        canvas.Text(text, new ChartPoint(ChartLayout.Right + 42, y + 4), new ChartTextStyle(TextSize, ChartAnchor.Start));
    }
}
