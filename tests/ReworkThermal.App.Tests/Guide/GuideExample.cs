namespace ReworkThermal.App.Tests.Guide;

/// <summary>A command that the guide shows, with what it is said to print.</summary>
/// <param name="Line">Line of the command in the guide.</param>
/// <param name="Words">The command line without the program's name.</param>
/// <param name="Shown">Lines shown below it; <see cref="Gap"/> stands for any lines.</param>
internal sealed record GuideExample(int Line, IReadOnlyList<string> Words, IReadOnlyList<string> Shown)
{
    internal const string Gap = "[...]";

    private const string Prompt = "$ rework-thermal ";

    /// <summary>Finds the examples of a Markdown text: fenced blocks named <c>console</c>, commands behind a prompt.</summary>
    internal static IReadOnlyList<GuideExample> In(string markdown)
    {
        List<GuideExample> examples = [];
        List<string>? shown = null;
        bool inside = false;
        string[] lines = markdown.ReplaceLineEndings("\n").Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].StartsWith("```", StringComparison.Ordinal))
            {
                inside = lines[i] == "```console";
                shown = null;
            }
            else if (inside && lines[i].StartsWith(Prompt, StringComparison.Ordinal))
            {
                int at = i + 1;
                string command = lines[i][Prompt.Length..];
                while (command.EndsWith('\\'))
                {
                    command = command[..^1] + lines[++i].TrimStart();
                }

                shown = [];
                examples.Add(new GuideExample(at, Split(command), shown));
            }
            else
            {
                shown?.Add(lines[i]);
            }
        }

        return examples;
    }

    /// <summary>Whether a text is what is shown; the first line that differs otherwise.</summary>
    internal string? DifferenceFrom(string printed)
    {
        string[] actual = printed.TrimEnd('\n').Split('\n');
        int at = 0;
        for (int i = 0; i < Shown.Count; i++)
        {
            if (Shown[i] == Gap)
            {
                if (i + 1 == Shown.Count)
                {
                    return null;
                }

                int next = Array.IndexOf(actual, Shown[i + 1], at);
                if (next < 0)
                {
                    return $"nowhere below: {Shown[i + 1]}";
                }

                at = next;
            }
            else if (at >= actual.Length || actual[at] != Shown[i])
            {
                return $"shown: {Shown[i]}\nprinted: {(at < actual.Length ? actual[at] : "(nothing more)")}";
            }
            else
            {
                at++;
            }
        }

        return at == actual.Length || Shown.Count == 0 ? null : $"not shown: {actual[at]}";
    }

    // Words as a shell splits them, as far as the guide goes: blanks and double quotes.
    private static List<string> Split(string command)
    {
        List<string> words = [];
        string[] parts = command.Split('"');
        for (int i = 0; i < parts.Length; i++)
        {
            words.AddRange(i % 2 == 1 ? [parts[i]] : parts[i].Split(' ', StringSplitOptions.RemoveEmptyEntries));
        }

        return words;
    }
}
