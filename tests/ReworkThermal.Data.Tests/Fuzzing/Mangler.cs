using System.Text;

namespace ReworkThermal.Data.Tests.Fuzzing;

/// <summary>Spoils a text in one to four places, the same way for the same seed: what editors, exports and torn writes do to files.</summary>
internal static class Mangler
{
    private static readonly string[] _numbers =
    [
        "nan", "inf", "-inf", "1e999", "-1", "0", "1e-320", "1,5", "0x10", "1_000", "99999999999999999999", "1e308", "-0.0", "٣", "1.5.2", "true",
    ];

    private static readonly string[] _pieces =
    [
        "\"", "'", "\"\"\"", "[", "]", "[[", "{", "}", "=", ",", "#", "\\", "\\u0000", "\0", "\u001b[31m", "\ufeff", "\u202e", "😀", "\r", "\r\n", "\t", "..", "/../../etc/passwd", "${HOME}", "null",
        "Cd", "Zn", "source = \"nobody\"", "= =", "mm", "µm", " C", "%", "1 mm", "\"1 mm\"", "\"-300 C\"", "\"nan K\"", "[]", "{}", "[[x]]", "x.y.z = 1",
    ];

    internal static string Mangle(string text, int seed)
    {
        Random random = new(seed);
        StringBuilder spoiled = new(text);
        for (int times = random.Next(1, 5); times > 0; times--)
        {
            Once(spoiled, random);
        }

        return spoiled.ToString();
    }

    private static void Once(StringBuilder text, Random random)
    {
        int at = random.Next(text.Length + 1);
        switch (random.Next(16))
        {
            case 0:
                text.Insert(at, _pieces[random.Next(_pieces.Length)]);
                break;
            case 1:
                text.Insert(at, (char)random.Next(1, 0x250));
                break;
            case 2 when at < text.Length:
                text.Remove(at, Math.Min(random.Next(1, 12), text.Length - at));
                break;
            case 3 when at < text.Length:
                text.Length = at;
                break;
            case 4:
                Lines(text, random, (lines, i) => lines.RemoveAt(i));
                break;
            case 5:
                Lines(text, random, (lines, i) => lines.Insert(random.Next(lines.Count), lines[i]));
                break;
            case 6:
                Lines(text, random, (lines, i) => (lines[i], lines[^1]) = (lines[^1], lines[i]));
                break;
            default:
                Number(text, at, _numbers[random.Next(_numbers.Length)]);
                break;
        }
    }

    private static void Lines(StringBuilder text, Random random, Action<List<string>, int> change)
    {
        List<string> lines = [.. text.ToString().Split('\n')];
        change(lines, random.Next(lines.Count));
        text.Clear().AppendJoin('\n', lines);
    }

    // Replaces the first number from a place on; none there, none replaced.
    private static void Number(StringBuilder text, int from, string by)
    {
        for (int i = from; i < text.Length; i++)
        {
            if (char.IsAsciiDigit(text[i]))
            {
                int end = i;
                while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == '.'))
                {
                    end++;
                }

                text.Remove(i, end - i).Insert(i, by);
                return;
            }
        }
    }
}
