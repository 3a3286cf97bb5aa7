using System.Globalization;
using System.Text.RegularExpressions;

namespace ReworkThermal.Core.Composition;

/// <summary>
/// Reads alloy designations in the manner of ISO 9453: element symbols, each with its percent by mass, such as
/// <c>Sn96.5Ag3Cu0.5</c> or <c>Sn63Pb37</c>; the first element may stand without a number, as in
/// <c>SnAg3Cu0.5</c>, where the first element is the balance.
/// </summary>
public static partial class AlloyDesignation
{
    /// <summary>Greatest total of germanium, cobalt and phosphorus that may be carried along [percent by mass].</summary>
    public const double MostTracePercent = 0.15;

    /// <summary>
    /// Greatest content of nickel that may be carried along [percent by mass]. What molten solder cannot hold of it stays as crystals;
    /// more than this would bind so much tin that the rest of the alloy is another one (judgement, no source).
    /// </summary>
    public const double MostNickelPercent = 1;

    // Rounding of printed compositions: a designation with one decimal per element may miss 100 by this much.
    private const double SumTolerancePercent = 0.05;

    private const string Nickel = "Ni";

    private static readonly HashSet<string> _traceElements = new(StringComparer.OrdinalIgnoreCase) { Nickel, "Ge", "Co", "P" };

    private static readonly Dictionary<string, string> _refusedElements = new(StringComparer.OrdinalIgnoreCase)
    {
        ["Cd"] = "cadmium is toxic and is not supported; choose an alloy without cadmium",
        ["Al"] = $"aluminium is not modelled; the phase data here cover {ElementData.Symbols}",
    };

    /// <summary>Reads a designation.</summary>
    /// <param name="text">Text from a user or a file.</param>
    /// <returns>The composition, or the reason why the text cannot be used.</returns>
    public static DesignationReading Read(string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return new DesignationReading.Refused("no composition was given; write it like Sn96.5Ag3Cu0.5 (percent by mass)");
        }

        string compact = text.Trim().Replace(" ", string.Empty, StringComparison.Ordinal);
        if (!DesignationPattern().IsMatch(compact))
        {
            return new DesignationReading.Refused(
                $"'{Shown(compact)}' is not a composition; write element symbols, each with its percent by mass and a decimal point, like Sn96.5Ag3Cu0.5");
        }

        List<(string Symbol, double? Percent)> parts = [];
        foreach (Match match in PartPattern().Matches(compact))
        {
            string number = match.Groups["number"].Value;
            double? percent = number.Length == 0 ? null : double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture);
            parts.Add((match.Groups["symbol"].Value, percent));
        }

        return Assemble(compact, parts);
    }

    private static DesignationReading Assemble(string text, List<(string Symbol, double? Percent)> parts)
    {
        double[] percents = new double[ElementData.Count];
        bool[] named = new bool[ElementData.Count];
        double trace = 0;
        double nickel = 0;
        double sum = 0;
        int balance = -1;
        foreach ((string symbol, double? percent) in parts)
        {
            bool isTrace = _traceElements.Contains(symbol);
            if (!ElementData.TryParseSymbol(symbol, out Element element) && !isTrace)
            {
                return new DesignationReading.Refused(_refusedElements.TryGetValue(symbol, out string? why)
                    ? $"'{text}': {why}"
                    : $"'{text}': '{symbol}' is not an element this program models ({ElementData.Symbols}; Ni, Ge, Co and P are carried along in small amounts)");
            }

            if (percent is null && (isTrace || parts[0].Symbol != symbol))
            {
                return new DesignationReading.Refused($"'{text}': {symbol} has no percentage; only the first element may stand without one, as the balance");
            }

            if (isTrace)
            {
                trace += symbol == Nickel ? 0 : percent!.Value;
                nickel += symbol == Nickel ? percent!.Value : 0;
                sum += percent!.Value;
                continue;
            }

            if (named[(int)element])
            {
                return new DesignationReading.Refused($"'{text}': {element.Symbol()} is named twice; give each element once");
            }

            named[(int)element] = true;
            percents[(int)element] = percent ?? 0;
            sum += percent ?? 0;
            balance = percent is null ? (int)element : balance;
        }

        return Close(text, percents, (trace, nickel), sum, balance);
    }

    private static DesignationReading Close(string text, double[] percents, (double Others, double Nickel) trace, double sum, int balance)
    {
        List<string> notes = [];
        if (trace.Others > MostTracePercent + 1e-9)
        {
            return new DesignationReading.Refused(string.Create(
                CultureInfo.InvariantCulture,
                $"'{text}': germanium, cobalt and phosphorus together are {trace.Others:0.###} %; at most {MostTracePercent} % can be carried as inert trace"));
        }

        if (trace.Nickel > MostNickelPercent + 1e-9)
        {
            return new DesignationReading.Refused(string.Create(
                CultureInfo.InvariantCulture,
                $"'{text}': {trace.Nickel:0.###} % nickel; at most {MostNickelPercent} % can be carried along, because more of it binds so much tin as crystals that the rest is another alloy"));
        }

        if (balance >= 0)
        {
            if (sum >= 100)
            {
                return new DesignationReading.Refused(string.Create(
                    CultureInfo.InvariantCulture,
                    $"'{text}': the other elements already add up to {sum:0.###} %, which leaves nothing for the balance"));
            }

            percents[balance] = 100 - sum;
        }
        else if (Math.Abs(sum - 100) > SumTolerancePercent)
        {
            return new DesignationReading.Refused(string.Create(
                CultureInfo.InvariantCulture,
                $"'{text}': the percentages add up to {sum:0.###}, not 100; correct them, or leave the number off the first element to make it the balance"));
        }
        else if (Math.Abs(sum - 100) > 1e-9)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"percentages added up to {sum:0.####}; scaled to 100"));
        }

        if (trace.Others > 0)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"{trace.Others:0.###} % of Ge, Co or P is carried as inert trace: its effect on melting is not modelled"));
        }

        if (trace.Nickel > 0)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"{trace.Nickel:0.###} % of nickel is carried as inert trace: no melting data with nickel are used"));
        }

        return new DesignationReading.Accepted(MassFractions.FromMasses(percents, trace.Others + trace.Nickel, trace.Nickel), notes);
    }

    private static string Shown(string text)
    {
        string clean = new(text.Where(c => !char.IsControl(c)).ToArray());
        return clean.Length <= 60 ? clean : clean[..60] + "...";
    }

    [GeneratedRegex(@"^(?:[A-Z][a-z]?(?:[0-9]{1,3}(?:\.[0-9]{1,6})?)?)+$", RegexOptions.CultureInvariant)]
    private static partial Regex DesignationPattern();

    [GeneratedRegex(@"(?<symbol>[A-Z][a-z]?)(?<number>[0-9]{1,3}(?:\.[0-9]{1,6})?)?", RegexOptions.CultureInvariant)]
    private static partial Regex PartPattern();
}
