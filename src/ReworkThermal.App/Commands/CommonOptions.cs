using System.CommandLine;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Commands;

/// <summary>Options that several commands have, each with one meaning.</summary>
internal static class CommonOptions
{
    /// <summary>The option <c>--note TEXT</c>.</summary>
    internal static Option<string?> Note() => new("--note") { Description = HelpText.Note, HelpName = "text" };

    /// <summary>The option <c>--reason TEXT</c>, which must be given.</summary>
    internal static Option<string> Reason() => new("--reason") { Description = HelpText.Reason, HelpName = "text", Required = true };

    /// <summary>The option <c>--force</c>.</summary>
    internal static Option<bool> Force() => new("--force") { Description = HelpText.Force };
}
