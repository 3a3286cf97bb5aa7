using System.CommandLine;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Commands;

/// <summary>Names of pads on the command line: one, or several with commas between them.</summary>
internal static class PadNames
{
    /// <summary>An option that names pads.</summary>
    internal static Option<string?> Option(string description, bool isRequired = false) => new("--pad")
    {
        Description = description,
        HelpName = "pad[,pad...]",
        Required = isRequired,
    };

    /// <summary>Reads pad names.</summary>
    /// <param name="text">What was typed; null for none.</param>
    /// <param name="pads">The pads; empty when none was named or the text is wrong.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal static string? Read(string? text, out IReadOnlyList<PadId> pads)
    {
        pads = [];
        string[] names = text?.Split(',', StringSplitOptions.TrimEntries) ?? [];
        if (names.Select(PadId.Fault).FirstOrDefault(f => f is not null) is { } fault)
        {
            return JobWords.BadPadName(text!, fault);
        }

        pads = [.. names.Select(n => new PadId(n))];
        return null;
    }
}
