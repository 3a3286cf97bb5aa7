using System.CommandLine;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Commands;

/// <summary>Options and arguments that name a file or a folder; an empty name is refused before anything is opened.</summary>
internal static class FilePaths
{
    /// <summary>An optional path.</summary>
    /// <param name="name">Option name with its dashes.</param>
    /// <param name="description">Help text.</param>
    /// <param name="helpName">What it names: a file or a folder.</param>
    /// <returns>The option; null when not given.</returns>
    internal static Option<string?> Option(string name, string description, string helpName = "file")
    {
        Option<string?> option = new(name) { Description = description, HelpName = helpName };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value.Length: 0 }])
            {
                result.AddError(Refusals.NoPath(name, helpName));
            }
        });
        return option;
    }

    /// <summary>A path that must be given.</summary>
    /// <param name="name">Name of the argument.</param>
    /// <param name="description">Help text.</param>
    /// <returns>The argument.</returns>
    internal static Argument<string> Argument(string name, string description)
    {
        Argument<string> argument = new(name) { Description = description };
        argument.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value.Length: 0 }])
            {
                result.AddError(Refusals.NoPath(name, "file"));
            }
        });
        return argument;
    }

    /// <summary>The argument that names a plan request.</summary>
    internal static Argument<string> Request() => Argument("request", HelpText.Request);
}
