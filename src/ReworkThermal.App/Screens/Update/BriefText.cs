using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The lines of a job's brief as text.</summary>
internal static class BriefText
{
    /// <summary>A line as text; empty while unknown.</summary>
    internal static string Of(JobBrief brief, BriefField field) => field switch
    {
        BriefField.Label => brief.Label,
        BriefField.Board => brief.Board ?? string.Empty,
        BriefField.Joint => brief.Joint ?? string.Empty,
        BriefField.Connector => brief.Connector ?? string.Empty,
        BriefField.BaseSolder => brief.BaseSolder ?? string.Empty,
        BriefField.LeadFreeOnly => brief.LeadFreeOnly ? ScreenWords.Yes : ScreenWords.No,
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    /// <summary>Texts to choose from.</summary>
    internal static IReadOnlyList<string> Options(BriefField field, ShelfNames? shelf) => field switch
    {
        BriefField.Board => shelf?.Boards ?? [],
        BriefField.Joint => shelf?.Joints ?? [],
        BriefField.Connector => shelf?.Connectors ?? [],
        BriefField.BaseSolder => shelf?.Solders ?? [],
        BriefField.LeadFreeOnly => [ScreenWords.No, ScreenWords.Yes],
        _ => [],
    };

    /// <summary>What is wrong with a text, or null.</summary>
    internal static string? Fault(BriefField field, string text, ShelfNames? shelf)
    {
        string trimmed = text.Trim();
        return field switch
        {
            BriefField.Label => trimmed.Length == 0 ? ScreenJobWords.LabelNeeded : null,
            BriefField.BaseSolder when trimmed.Length > 0 => Solder(trimmed, Options(field, shelf)),
            BriefField.Board or BriefField.Joint or BriefField.Connector => Named(trimmed, Options(field, shelf)),
            BriefField.LeadFreeOnly => trimmed is ScreenWords.Yes or ScreenWords.No ? null : ScreenWords.YesOrNo(trimmed),
            _ => null,
        };
    }

    /// <summary>The brief with a line changed; empty text means unknown.</summary>
    internal static JobBrief With(JobBrief brief, BriefField field, string text)
    {
        string? known = text.Trim() is { Length: > 0 } trimmed ? trimmed : null;
        return field switch
        {
            BriefField.Label => brief with { Label = known ?? brief.Label },
            BriefField.Board => brief with { Board = known },
            BriefField.Joint => brief with { Joint = known },
            BriefField.Connector => brief with { Connector = known },
            BriefField.BaseSolder => brief with { BaseSolder = known },
            BriefField.LeadFreeOnly => brief with { LeadFreeOnly = known == ScreenWords.Yes },
            _ => throw new ArgumentOutOfRangeException(nameof(field)),
        };
    }

    /// <summary>What is wrong with a solder, which is one of the known names or a composition.</summary>
    internal static string? Solder(string text, IReadOnlyList<string> known) =>
        !known.Contains(text) && AlloyDesignation.Read(text) is DesignationReading.Refused refused ? refused.Reason : null;

    /// <summary>What is wrong with a name that must be one of some; nothing when none are known.</summary>
    internal static string? Named(string text, IReadOnlyList<string> known) =>
        text.Length == 0 || known.Count == 0 || known.Contains(text) ? null : ScreenWords.NotKnown(text, known);
}
