using System.Globalization;
using System.Security;
using System.Text;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Damage;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Pads;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>
/// Draws the budgets of pads as bars, one per pad: full up to the central share, a line to the unfavourable end, the limit as an
/// upright line. Words stand beside every bar, so that neither colour nor length is the only sign.
/// </summary>
internal static class BudgetChart
{
    private const int Width = 860;

    private const int Left = 120;

    private const int Right = 660;

    private const int Top = 46;

    private const int RowHeight = 20;

    private const int BarHeight = 12;

    /// <summary>Share at the right edge; what lies beyond ends there with an arrow.</summary>
    private const double MostShare = 1.5;

    /// <summary>Draws the chart.</summary>
    /// <param name="pads">The pads, at least one.</param>
    /// <returns>An SVG element.</returns>
    internal static string Draw(IReadOnlyList<PadAccount> pads)
    {
        int height = Top + (pads.Count * RowHeight) + 30;
        StringBuilder svg = new();
        svg.Append(CultureInfo.InvariantCulture, $"""
            <svg xmlns="http://www.w3.org/2000/svg" width="{Width}" height="{height}" viewBox="0 0 {Width} {height}" font-family="sans-serif">
            <title>{Escaped(RecordWords.BudgetTitle)}</title>
            <rect width="{Width}" height="{height}" fill="#ffffff"/>
            <text x="{Left}" y="24" font-size="16" text-anchor="start">{Escaped(RecordWords.BudgetTitle)}</text>
            """).Append('\n');
        foreach (double share in (double[])[0, 0.5, 1, 1.5])
        {
            string x = At(share);
            string pen = share == 1 ? "stroke=\"#000000\" stroke-width=\"2\"" : "stroke=\"#dddddd\" stroke-width=\"1\"";
            svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{x}\" y1=\"{Top - 8}\" x2=\"{x}\" y2=\"{height - 24}\" {pen}/>\n");
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x}\" y=\"{height - 8}\" font-size=\"13\" text-anchor=\"middle\">{Numerals.Fixed(share * 100, 0)} %</text>\n");
        }

        for (int i = 0; i < pads.Count; i++)
        {
            Row(svg, pads[i], Top + (i * RowHeight));
        }

        return svg.Append("</svg>\n").ToString().ReplaceLineEndings("\n");
    }

    private static void Row(StringBuilder svg, PadAccount pad, int top)
    {
        Spread share = pad.Budget.Share;
        double middle = top + (BarHeight / 2.0);
        string baseline = (top + BarHeight - 1).ToString(CultureInfo.InvariantCulture);
        double length = Math.Min(share.Central, MostShare) / MostShare * (Right - Left);
        string name = pad.Ledger.Pad.Value + (BudgetView.NameOf(pad) is { } known ? " " + Shortened(known) : string.Empty);
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{Left - 8}\" y=\"{baseline}\" font-size=\"13\" text-anchor=\"end\">{Escaped(name)}</text>\n");
        svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{Left}\" y=\"{top}\" width=\"{Short(length)}\" height=\"{BarHeight}\" fill=\"{(pad.Budget.Band >= DamageBand.High ? "#d55e00" : "#0072b2")}\"/>\n");
        svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{At(share.Low)}\" y1=\"{Short(middle)}\" x2=\"{At(share.High)}\" y2=\"{Short(middle)}\" stroke=\"#555555\" stroke-width=\"2\" stroke-dasharray=\"4 2\"/>\n");
        string words = RecordWords.BarWords(
            Numerals.Percent(share.Central), Numerals.Percent(share.High), pad.Budget.Band.Word(), share.High > MostShare);
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{Right + 10}\" y=\"{baseline}\" font-size=\"13\" text-anchor=\"start\">{Escaped(words)}</text>\n");
    }

    private static string At(double share) => Short(Left + (Math.Clamp(share, 0, MostShare) / MostShare * (Right - Left)));

    private static string Shortened(string name) => name.Length <= 10 ? name : name[..9] + "…";

    private static string Short(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Escaped(string text) => SecurityElement.Escape(SafeText.OneLine(text));
}
