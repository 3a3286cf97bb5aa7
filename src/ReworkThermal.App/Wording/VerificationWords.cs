using System.Globalization;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Verification;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the verification.</summary>
internal static class VerificationWords
{
    internal const string Title = "Computed here beside published elsewhere";

    internal const string None = "-";

    internal const string NotComputed = "none";

    internal const string Informative = "For information, not counted: from memory, or another quantity than the computed one; each says why";

    internal const string Explanation =
        "The room of a figure is its stated uncertainty or the tolerance that its table gives reasons for. "
        + "The figures check the program and its data; they do not know your board.";

    internal const string MarkdownHead = "| area | figures met | read in the source | computed outside this project | from memory | the worst: computed against published |";

    internal const string MarkdownRule = "|---|---|---|---|---|---|";

    internal static readonly string[] SummaryColumns = ["area", ">figures", ">met", ">read in source", ">computed elsewhere", ">from memory", ">worst uses of its room"];

    internal static readonly string[] FigureColumns = [">published", ">computed", ">off", ">of room", "what, and where from"];

    internal static string AreaOf(VerificationArea area) => area switch
    {
        VerificationArea.Melting => "melting",
        VerificationArea.HeatFlow => "heat flow",
        VerificationArea.ThreeDimensional => "three-dimensional reference",
        VerificationArea.Practice => "practice",
        VerificationArea.Damage => "damage",
        VerificationArea.Wires => "wires",
        _ => throw new ArgumentOutOfRangeException(nameof(area)),
    };

    internal static string MarkOf(EvidenceMark mark) => mark switch
    {
        EvidenceMark.Seen => "read in the source",
        EvidenceMark.SecondHand => "as quoted by somebody else",
        EvidenceMark.Computed => "computed outside this project",
        EvidenceMark.Memory => "from memory",
        EvidenceMark.Judgement => "judgement",
        EvidenceMark.Practice => "common practice",
        _ => throw new ArgumentOutOfRangeException(nameof(mark)),
    };

    internal static string AgreementOf(Agreement agreement) => agreement switch
    {
        Agreement.Within => "within",
        Agreement.Outside => "OUTSIDE",
        _ => "for information",
    };

    internal static string AreaTitle(VerificationArea area, int shown, int all) => shown < all
        ? string.Create(CultureInfo.InvariantCulture, $"{Sentence.Capital(AreaOf(area))}: the worst {shown} of {all}")
        : string.Create(CultureInfo.InvariantCulture, $"{Sentence.Capital(AreaOf(area))}: all {all}, the worst first");

    internal static string Total(int met, int binding, int informative) => string.Create(
        CultureInfo.InvariantCulture,
        $"{met} of {binding} published figures are met; {informative} more are shown for information with --all.");

    internal static string Where(string subject, string remark, string mark, string source) =>
        remark.Length > 0 ? $"{subject}. {Stopped(remark)} {Sentence.Capital(mark)}: {source}" : $"{subject}. {Sentence.Capital(mark)}: {source}";

    private static string Stopped(string text) => text.EndsWith('.') ? text : text + ".";
}
