using System.Collections.Immutable;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Update;

/// <summary>The mix: every change asks anew; late answers are dropped.</summary>
internal static class MixUpdate
{
    private const double FineStep = 1;
    private const double CoarseStep = 5;

    private static readonly MixField[] _fields = Enum.GetValues<MixField>();

    internal static Step Apply(BenchState state, Press press)
    {
        MixState mix = state.Mix;
        MixField field = _fields[mix.Row];
        switch (press)
        {
            case { Kind: PressKind.Up or PressKind.Down or PressKind.Home or PressKind.End }:
                return new Step(state with { Mix = mix with { Row = Rows.After(mix.Row, _fields.Length, press) ?? mix.Row } });
            case { Kind: PressKind.Left or PressKind.Right }:
                return Slide(state, field, press.Kind == PressKind.Right ? 1 : -1, FineStep);
            case { Kind: PressKind.PageUp or PressKind.PageDown }:
                return Slide(state, field, press.Kind == PressKind.PageUp ? 1 : -1, CoarseStep);
            case { Kind: PressKind.Enter }:
                return EntryOpening.Open(state, new EntryFor.Mix(field));
            case { Letter: 'k' } when mix.Answer is MixAnswer.Reckoned reckoned && mix.AnsweredTurn == mix.Turn:
                return state.Job is null
                    ? new Step(state).Complain(ScreenWords.OpenJobFirst)
                    : new Step(state).Record(new JobEvent.NoteTaken(ScreenMixWords.AsNote(mix.Question, reckoned.Figures), null)).Say(ScreenMixWords.NotedInRecord);
            default:
                return new Step(state);
        }
    }

    /// <summary>Asks a question; the answer to an earlier one stays on screen, marked as old, until the new one comes.</summary>
    internal static Step Ask(BenchState state, MixQuestion question, ImmutableList<Errand>? before = null)
    {
        int turn = state.Mix.Turn + 1;
        return new Step(state with { Mix = state.Mix with { Question = question, Turn = turn } }, before ?? []).Do(new Errand.ReckonMix(turn, question));
    }

    internal static Step Reckoned(BenchState state, Message.MixReckoned reckoned) => new(reckoned.Turn <= state.Mix.AnsweredTurn
        ? state
        : state with { Mix = state.Mix with { Answer = reckoned.Answer, AnsweredTurn = reckoned.Turn } });

    internal static Step Typed(BenchState state, TextEntry entry, MixField field)
    {
        string text = entry.Text.Trim();
        MixQuestion question = state.Mix.Question;
        if (field is MixField.SharePercent)
        {
            return Update.Typed.Number(text, 0, MixQuestion.MostSharePercent, "%", out double share) is { } wrong
                ? EntryCommit.Wrong(state, entry, wrong)
                : Ask(state with { Entry = null }, question with { SharePercent = share });
        }

        if (field is MixField.Passes)
        {
            return Update.Typed.Number(text, 0, MixQuestion.MostPasses, string.Empty, out double passes) is { } wrong
                ? EntryCommit.Wrong(state, entry, wrong)
                : passes != Math.Floor(passes) ? EntryCommit.Wrong(state, entry, ScreenWords.WholeNumber(text))
                : Ask(state with { Entry = null }, question with { Passes = (int)passes });
        }

        IReadOnlyList<string> known = Options(field, state.Shelf);
        string? fault = field is MixField.BaseSolder or MixField.Alloy or MixField.Refill
            ? BriefText.Solder(text, known)
            : text.Length == 0 ? ScreenWords.TextNeeded : BriefText.Named(text, known);
        return fault is not null ? EntryCommit.Wrong(state, entry, fault) : Ask(state with { Entry = null }, With(question, field, text));
    }

    /// <summary>A line as text.</summary>
    internal static string Text(MixQuestion question, MixField field) => field switch
    {
        MixField.Joint => question.Joint,
        MixField.Board => question.Board,
        MixField.BaseSolder => question.BaseSolder,
        MixField.Alloy => question.Alloy,
        MixField.SharePercent => Update.Typed.Text(question.SharePercent),
        MixField.Removal => question.Removal,
        MixField.Passes => Update.Typed.Text(question.Passes),
        MixField.Refill => question.Refill,
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    internal static IReadOnlyList<string> Options(MixField field, ShelfNames? shelf) => field switch
    {
        MixField.Joint => shelf?.Joints ?? [],
        MixField.Board => shelf?.Boards ?? [],
        MixField.BaseSolder or MixField.Refill => shelf?.Solders ?? [],
        MixField.Alloy => shelf?.Dilutions ?? [],
        MixField.Removal => shelf?.Removals ?? [],
        _ => [],
    };

    private static MixQuestion With(MixQuestion question, MixField field, string text) => field switch
    {
        MixField.Joint => question with { Joint = text },
        MixField.Board => question with { Board = text },
        MixField.BaseSolder => question with { BaseSolder = text },
        MixField.Alloy => question with { Alloy = text },
        MixField.Removal => question with { Removal = text },
        MixField.Refill => question with { Refill = text },
        _ => throw new ArgumentOutOfRangeException(nameof(field)),
    };

    private static Step Slide(BenchState state, MixField field, int direction, double step)
    {
        MixQuestion question = state.Mix.Question;
        MixQuestion next = field switch
        {
            MixField.SharePercent => question with { SharePercent = Math.Clamp(question.SharePercent + (direction * step), 0, MixQuestion.MostSharePercent) },
            MixField.Passes => question with { Passes = Math.Clamp(question.Passes + direction, 0, MixQuestion.MostPasses) },
            _ => EntryOpening.Of(state, new EntryFor.Mix(field)).Stepped(direction) is { Text.Length: > 0 } stepped
                ? With(question, field, stepped.Text)
                : question,
        };
        return next == question ? new Step(state) : Ask(state, next);
    }
}
