namespace ReworkThermal.App.Rendering.Charts;

/// <summary>
/// Letters made of straight strokes, so that a picture needs no font on the machine. A glyph is a list of chains of grid points; a
/// point is two digits, x from 0 to 4 and y from 0 upwards with the baseline at 2, small letters up to 6 and capitals up to 8.
/// </summary>
internal static class StrokeFont
{
    /// <summary>Height of the baseline in grid units.</summary>
    internal const int Baseline = 2;

    /// <summary>Step from one letter to the next in grid units.</summary>
    internal const double Advance = 6;

    /// <summary>Grid units per font size: capitals are 6 units high and about 0.7 of the size.</summary>
    internal const double UnitsPerSize = 6 / 0.7;

    /// <summary>What a letter without a glyph looks like: an empty box.</summary>
    private const string Missing = "02 08 48 42 02";

    private static readonly Dictionary<char, string> _glyphs = new()
    {
        [' '] = "",
        ['A'] = "02 28 42|14 34",
        ['B'] = "02 08 38 47 46 35 05|35 44 43 32 02",
        ['C'] = "47 38 18 07 03 12 32 43",
        ['D'] = "02 08 28 46 44 22 02",
        ['E'] = "48 08 02 42|05 35",
        ['F'] = "48 08 02|05 35",
        ['G'] = "47 38 18 07 03 12 32 43 45 25",
        ['H'] = "02 08|42 48|05 45",
        ['I'] = "18 38|28 22|12 32",
        ['J'] = "48 43 32 12 03",
        ['K'] = "08 02|48 05 42",
        ['L'] = "08 02 42",
        ['M'] = "02 08 25 48 42",
        ['N'] = "02 08 42 48",
        ['O'] = "18 38 47 43 32 12 03 07 18",
        ['P'] = "02 08 38 47 46 35 05",
        ['Q'] = "18 38 47 43 32 12 03 07 18|24 42",
        ['R'] = "02 08 38 47 46 35 05|25 42",
        ['S'] = "47 38 18 07 06 15 35 44 43 32 12 03",
        ['T'] = "08 48|28 22",
        ['U'] = "08 03 12 32 43 48",
        ['V'] = "08 22 48",
        ['W'] = "08 12 25 32 48",
        ['X'] = "08 42|02 48",
        ['Y'] = "08 25 48|25 22",
        ['Z'] = "08 48 02 42",
        ['a'] = "16 36 45 42|44 14 03 12 32 43",
        ['b'] = "08 02|05 16 36 45 43 32 12 03",
        ['c'] = "45 36 16 05 03 12 32 43",
        ['d'] = "48 42|45 36 16 05 03 12 32 43",
        ['e'] = "04 44 45 36 16 05 03 12 32 43",
        ['f'] = "38 28 17 12|06 36",
        ['g'] = "46 41 30 10 01|45 36 16 05 03 12 32 43",
        ['h'] = "08 02|05 16 36 45 42",
        ['i'] = "26 22|28 28",
        ['j'] = "36 31 20 10|38 38",
        ['k'] = "08 02|46 04 42",
        ['l'] = "18 28 22|12 32",
        ['m'] = "02 06|05 16 25 22|25 36 45 42",
        ['n'] = "02 06|05 16 36 45 42",
        ['o'] = "16 36 45 43 32 12 03 05 16",
        ['p'] = "06 00|05 16 36 45 43 32 12 03",
        ['q'] = "46 40|45 36 16 05 03 12 32 43",
        ['r'] = "02 06|05 16 36 45",
        ['s'] = "45 36 16 05 14 34 43 32 12 03",
        ['t'] = "18 13 22 32|06 36",
        ['u'] = "06 03 12 32 43|46 42",
        ['v'] = "06 22 46",
        ['w'] = "06 12 25 32 46",
        ['x'] = "06 42|02 46",
        ['y'] = "06 22|46 22 10 00",
        ['z'] = "06 46 02 42",
        ['0'] = "18 38 47 43 32 12 03 07 18",
        ['1'] = "17 28 22|12 32",
        ['2'] = "07 18 38 47 46 02 42",
        ['3'] = "07 18 38 47 46 35 15|35 44 43 32 12 03",
        ['4'] = "32 38 04 44",
        ['5'] = "48 08 05 35 44 43 32 12 03",
        ['6'] = "38 18 07 03 12 32 43 44 35 05",
        ['7'] = "08 48 12",
        ['8'] = "18 38 47 46 35 15 06 07 18|15 04 03 12 32 43 44 35",
        ['9'] = "12 32 43 47 38 18 07 06 15 45",
        ['.'] = "22 23",
        [','] = "22 11",
        [':'] = "22 23|25 26",
        [';'] = "22 11|25 26",
        ['-'] = "05 45",
        ['+'] = "05 45|23 27",
        ['±'] = "06 46|24 28|03 43",
        ['='] = "04 44|06 46",
        ['('] = "38 26 24 32",
        [')'] = "18 26 24 12",
        ['/'] = "02 48",
        ['%'] = "02 48|07 17 18 08 07|32 42 43 33 32",
        ['°'] = "17 27 28 18 17",
        ['_'] = "01 41",
        ['\''] = "28 27",
        ['²'] = "18 28 27 16 26",
        ['³'] = "18 28 27 17|27 26 16",
    };

    /// <summary>Strokes of a letter.</summary>
    /// <param name="letter">The letter.</param>
    /// <returns>Chains of points in grid units, with the baseline at zero.</returns>
    internal static IEnumerable<IReadOnlyList<ChartPoint>> StrokesOf(char letter)
    {
        string glyph = _glyphs.GetValueOrDefault(letter, Missing);
        return glyph.Length == 0
            ? []
            : glyph.Split('|').Select(chain => (IReadOnlyList<ChartPoint>)[.. chain.Split(' ').Select(p => new ChartPoint(p[0] - '0', p[1] - '0' - Baseline))]);
    }
}
