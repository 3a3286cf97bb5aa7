namespace ReworkThermal.Data.Store;

/// <summary>Members of a closed list and their words, both ways.</summary>
/// <typeparam name="T">The closed list.</typeparam>
internal sealed class WordList<T>
    where T : struct, Enum
{
    private readonly Dictionary<T, string> _words;
    private readonly Dictionary<string, T> _members;

    internal WordList(params ReadOnlySpan<(T Member, string Word)> pairs)
    {
        _words = [];
        _members = new(StringComparer.Ordinal);
        foreach ((T member, string word) in pairs)
        {
            _words.Add(member, word);
            _members.Add(word, member);
        }
    }

    internal IReadOnlyDictionary<string, T> Members => _members;

    internal string this[T member] => _words[member];
}
