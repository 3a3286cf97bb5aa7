using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Commands;

/// <summary>
/// Numbers on the command line. The parser's own conversion takes a comma for a thousands separator, so that <c>1,5</c> becomes
/// 15; here a number has a decimal point, is finite and lies within limits, or is refused.
/// </summary>
internal static class Numbers
{
    /// <summary>Greatest number of an entry or an observed touch that is taken for one: far more than a job has.</summary>
    internal const int MostEntries = 1_000_000;

    /// <summary>An optional number.</summary>
    /// <param name="name">Option name with its dashes.</param>
    /// <param name="description">Help text, with the unit.</param>
    /// <param name="least">Least value allowed.</param>
    /// <param name="most">Greatest value allowed.</param>
    /// <param name="unit">Unit for messages; empty for a plain ratio.</param>
    /// <returns>The option; null when not given.</returns>
    internal static Option<double?> Option(string name, string description, double least, double most, string unit) => new(name)
    {
        Description = description,
        HelpName = unit.Length > 0 ? unit : "number",
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = result => Read(result, name, least, most, unit),
    };

    /// <summary>An optional whole number.</summary>
    /// <param name="name">Option name with its dashes.</param>
    /// <param name="description">Help text.</param>
    /// <param name="least">Least value allowed.</param>
    /// <param name="most">Greatest value allowed.</param>
    /// <returns>The option; null when not given.</returns>
    internal static Option<int?> WholeOption(string name, string description, int least, int most) => new(name)
    {
        Description = description,
        HelpName = "number",
        Arity = ArgumentArity.ExactlyOne,
        CustomParser = result => ReadWhole(result, name, least, most),
    };

    /// <summary>A whole number that must be given.</summary>
    /// <param name="name">Name of the argument.</param>
    /// <param name="description">Help text.</param>
    /// <param name="least">Least value allowed.</param>
    /// <param name="most">Greatest value allowed.</param>
    /// <returns>The argument.</returns>
    internal static Argument<int> WholeArgument(string name, string description, int least, int most) => new(name)
    {
        Description = description,
        CustomParser = result => ReadWhole(result, name, least, most) ?? least,
    };

    /// <summary>An optional pair of whole numbers.</summary>
    /// <param name="name">Option name with its dashes.</param>
    /// <param name="description">Help text.</param>
    /// <param name="least">Least value allowed.</param>
    /// <param name="most">Greatest value allowed.</param>
    /// <returns>The option; null when not given.</returns>
    internal static Option<int[]?> WholePairOption(string name, string description, int least, int most) => new(name)
    {
        Description = description,
        HelpName = "numbers",
        Arity = new ArgumentArity(2, 2),
        AllowMultipleArgumentsPerToken = true,
        CustomParser = result => [.. result.Tokens.Select(t => ReadWhole(result, t.Value, name, least, most) ?? least)],
    };

    private static int? ReadWhole(ArgumentResult result, string name, int least, int most) =>
        ReadWhole(result, result.Tokens.Count > 0 ? result.Tokens[0].Value : string.Empty, name, least, most);

    private static int? ReadWhole(ArgumentResult result, string text, string name, int least, int most)
    {
        if (!int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value) || value < least || value > most)
        {
            result.AddError(Refusals.NotAWholeNumber(name, text, least, most));
            return null;
        }

        return value;
    }

    private static double? Read(ArgumentResult result, string name, double least, double most, string unit)
    {
        string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : string.Empty;
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) || !double.IsFinite(value))
        {
            result.AddError(Refusals.NotANumber(name, text));
            return null;
        }

        if (value < least || value > most)
        {
            result.AddError(Refusals.OutOfLimits(name, value, least, most, unit));
            return null;
        }

        return value;
    }
}
