using System.CommandLine;
using System.CommandLine.Parsing;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Evidence;

namespace ReworkThermal.App.Commands;

/// <summary>Options and arguments that take one of a few words.</summary>
internal static class Choice
{
    /// <summary>An option with known words.</summary>
    /// <typeparam name="T">What the words stand for.</typeparam>
    /// <param name="name">Name of the option with its dashes.</param>
    /// <param name="description">Help text.</param>
    /// <param name="words">The words.</param>
    /// <returns>The option; null when it is not given.</returns>
    internal static Option<T?> Option<T>(string name, string description, IReadOnlyDictionary<string, T> words)
        where T : struct => new(name)
        {
            Description = $"{description} ({string.Join(", ", words.Keys)})",
            HelpName = "word",
            CustomParser = result => Read(result, name, words),
        };

    /// <summary>An option that takes a word of a closed list; null when it is not given.</summary>
    internal static Option<T?> Option<T>(string name, string description)
        where T : struct, Enum => Option(name, description, Vocabulary.Of<T>());

    /// <summary>An argument that is a word of a closed list.</summary>
    internal static Argument<T> Argument<T>(string name, string description)
        where T : struct, Enum => new(name)
        {
            Description = $"{description} ({string.Join(", ", Vocabulary.Of<T>().Keys)})",
            CustomParser = result => Read(result, name, Vocabulary.Of<T>()) ?? default,
        };

    private static T? Read<T>(ArgumentResult result, string name, IReadOnlyDictionary<string, T> words)
        where T : struct
    {
        string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : string.Empty;
        if (words.TryGetValue(text, out T value))
        {
            return value;
        }

        result.AddError(Refusals.UnknownName(name, text, words.Keys));
        return null;
    }
}
