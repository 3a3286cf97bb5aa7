using ReworkThermal.App.Rendering;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Reports.Solders;

namespace ReworkThermal.App.Wording;

/// <summary>What tables print for an alloy, beside what is computed.</summary>
internal static class PrintedWords
{
    /// <summary>One sentence or two.</summary>
    /// <param name="alloy">The listed alloy.</param>
    /// <param name="computed">What is computed for it.</param>
    /// <param name="cite">Full citation of a source key, or null.</param>
    internal static string Of(Alloy alloy, MeltReport computed, Func<string, string?> cite)
    {
        PublishedMelting printed = alloy.Melting;
        string range = printed.Solidus >= printed.Liquidus
            ? Numerals.Celsius(printed.Liquidus)
            : $"{Numerals.Celsius(printed.Solidus)} to {Numerals.Celsius(printed.Liquidus)}";
        string sentence = $"Tables print {range} for {alloy.Name}: {cite(printed.Provenance.Source) ?? printed.Provenance.Source} ({Mark(printed.Provenance.Mark)}).";
        return (printed.IsArrest, computed) switch
        {
            (true, MeltReport.Computed melt) => $"{sentence} That point is one arrest of a heating curve: the joint moves only at {Numerals.Celsius(melt.Flow)} and is wholly liquid at {Numerals.Celsius(melt.Liquidus)}.",
            (true, _) => $"{sentence} That point is one arrest of a heating curve, not the end of melting.",
            _ => sentence,
        };
    }

    private static string Mark(EvidenceMark mark) => mark switch
    {
        EvidenceMark.Seen => "read there",
        EvidenceMark.SecondHand => "second-hand",
        EvidenceMark.Computed => "computed",
        EvidenceMark.Memory => "not checked against the text",
        EvidenceMark.Judgement => "judgement",
        _ => "common practice",
    };
}
