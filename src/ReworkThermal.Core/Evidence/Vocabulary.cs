using System.Reflection;
using System.Runtime.Serialization;

namespace ReworkThermal.Core.Evidence;

/// <summary>
/// Words for the members of closed lists, the same in files, on the command line, on the screens and in JSON. The word stands beside
/// its member, as <see cref="EnumMemberAttribute"/>. Words are part of file formats: add, never change.
/// </summary>
public static class Vocabulary
{
    /// <summary>The word for a member.</summary>
    /// <param name="member">A member of a list whose members have words.</param>
    /// <returns>The word.</returns>
    public static string Word<T>(this T member)
        where T : struct, Enum => List<T>.Words[member];

    /// <summary>All words of a closed list with what they stand for, in the order of the list.</summary>
    /// <returns>Members by word.</returns>
    public static IReadOnlyDictionary<string, T> Of<T>()
        where T : struct, Enum => List<T>.Members;

    private static class List<T>
        where T : struct, Enum
    {
        internal static readonly Dictionary<T, string> Words = Enum.GetValues<T>().ToDictionary(
            m => m,
            m => typeof(T).GetField(m.ToString())?.GetCustomAttribute<EnumMemberAttribute>()?.Value ?? throw new InvalidOperationException($"{typeof(T).Name}.{m} has no word"));

        internal static readonly OrderedDictionary<string, T> Members = new(Words.Select(w => KeyValuePair.Create(w.Value, w.Key)), StringComparer.Ordinal);
    }
}
