namespace ReworkThermal.Core.Jobs;

/// <summary>
/// Name of a pad within a job, such as <c>12</c>, <c>A7</c> or <c>U5.3</c>: 1 to 40 printable characters without spaces, commas,
/// semicolons or quotes, so that it can be typed in a shell and stand in a CSV cell. A connector pin and its pad share the name.
/// </summary>
/// <param name="Value">The characters.</param>
public sealed record PadId(string Value) : IComparable<PadId>
{
    private const int Longest = 40;

    /// <summary>The characters.</summary>
    public string Value { get; } = Fault(Value) is { } fault ? throw new ArgumentException(fault, nameof(Value)) : Value;

    /// <summary>Says what is wrong with the text of a pad name.</summary>
    /// <param name="text">Text to judge.</param>
    /// <returns>Null when the text can name a pad, else one clause.</returns>
    public static string? Fault(string? text) =>
        string.IsNullOrEmpty(text) || text.Length > Longest || !text.All(c => c is > ' ' and <= '~' && c is not (',' or ';' or '"' or '\''))
            ? "a pad name is 1 to 40 printable ASCII characters without spaces, commas, semicolons or quotes"
            : null;

    /// <summary>Orders names so that 2 comes before 10: by leading text, then by the number that follows, then by what remains.</summary>
    /// <param name="other">Name to compare with.</param>
    /// <returns>Negative, zero or positive as usual.</returns>
    public int CompareTo(PadId? other)
    {
        if (other is null)
        {
            return 1;
        }

        int i = 0;
        int j = 0;
        while (i < Value.Length && j < other.Value.Length)
        {
            if (char.IsAsciiDigit(Value[i]) && char.IsAsciiDigit(other.Value[j]))
            {
                ReadOnlySpan<char> mine = DigitsAt(Value, ref i);
                ReadOnlySpan<char> theirs = DigitsAt(other.Value, ref j);
                int byLength = mine.Length.CompareTo(theirs.Length);
                int byNumber = byLength != 0 ? byLength : mine.SequenceCompareTo(theirs);
                if (byNumber != 0)
                {
                    return byNumber;
                }
            }
            else if (Value[i] != other.Value[j])
            {
                return Value[i].CompareTo(other.Value[j]);
            }
            else
            {
                i++;
                j++;
            }
        }

        int rest = (Value.Length - i).CompareTo(other.Value.Length - j);
        return rest != 0 ? rest : string.CompareOrdinal(Value, other.Value);
    }

    /// <summary>The characters alone.</summary>
    /// <returns><see cref="Value"/>.</returns>
    public override string ToString() => Value;

    private static ReadOnlySpan<char> DigitsAt(string text, ref int index)
    {
        int start = index;
        while (index < text.Length && char.IsAsciiDigit(text[index]))
        {
            index++;
        }

        ReadOnlySpan<char> digits = text.AsSpan(start, index - start).TrimStart('0');
        return digits;
    }
}
