namespace ReworkThermal.Data;

/// <summary>How much of a value that cannot be used is repeated in the sentence about it.</summary>
internal static class BadValue
{
    private const int Most = 200;

    /// <summary>The value, or its beginning.</summary>
    internal static string Shown(string value) => value.Length <= Most ? value : value[..Most] + "...";
}
