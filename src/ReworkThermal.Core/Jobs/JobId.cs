namespace ReworkThermal.Core.Jobs;

/// <summary>Identity of a job across stores: lower-case letters and digits, 6 to 26 of them, short enough to type.</summary>
/// <param name="Value">The characters.</param>
public sealed record JobId(string Value)
{
    private const int Shortest = 6;
    private const int Longest = 26;

    /// <summary>The characters.</summary>
    public string Value { get; } = Fault(Value) is { } fault ? throw new ArgumentException(fault, nameof(Value)) : Value;

    /// <summary>Says what is wrong with the text of an identity.</summary>
    /// <param name="text">Text to judge.</param>
    /// <returns>Null when the text can be an identity, else one clause.</returns>
    public static string? Fault(string? text) =>
        text is null || text.Length < Shortest || text.Length > Longest || !text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c))
            ? "a job identity is 6 to 26 lower-case letters and digits"
            : null;

    /// <summary>The characters alone.</summary>
    /// <returns><see cref="Value"/>.</returns>
    public override string ToString() => Value;
}
