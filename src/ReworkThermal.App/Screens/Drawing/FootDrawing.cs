using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>The last three rows: the text being typed or the answer to the last key; the keys of the place; the status line.</summary>
internal static class FootDrawing
{
    private const int Height = 3;
    private const int MostOfDraft = 40;

    internal static void Draw(Sheet sheet, Area all, BenchState state)
    {
        Area foot = all.Rows(all.Height - Height);
        if (state.Overlay == Overlay.Leave)
        {
            Say(sheet, all, LeaveQuestion(state), Ink.Care);
            sheet.Put(foot, 0, 1, ScreenWords.LeaveKeys, Ink.Quiet);
        }
        else if (state.Overlay == Overlay.ReplaceRecord)
        {
            Say(sheet, all, ScreenRecordWords.There(state.Record.There), Ink.Care);
            sheet.Put(foot, 0, 1, ScreenRecordWords.ReplaceKeys, Ink.Quiet);
        }
        else if (state.DraftOnOffer is { } draft)
        {
            bool hasJob = DraftUpdate.HasJob(state, draft);
            string text = Sheet.Cut(draft.Text, MostOfDraft);
            Say(sheet, all, hasJob ? ScreenWords.DraftOffer(draft.JobName, draft.Label, text) : ScreenWords.DraftOfNoJob(draft.JobName, draft.Label, text), Ink.Care);
            sheet.Put(foot, 0, 1, hasJob ? ScreenWords.DraftKeys : ScreenWords.DraftKeysOfNoJob, Ink.Quiet);
        }
        else if (state.Entry is { } entry && state.Overlay == Overlay.None)
        {
            Entry(sheet, all, entry);
        }
        else
        {
            Say(sheet, all, state.Notice.Text, state.Notice.IsComplaint ? Ink.Care : Ink.Good);
            Keys(sheet, foot, state);
        }

        Status(sheet, foot, state);
    }

    /// <summary>An answer of one row, or of two with the last row of the place beneath.</summary>
    private static void Say(Sheet sheet, Area all, string text, Ink ink)
    {
        bool longer = CellWidth.Of(text) > all.Width;
        Area rows = all.Rows(all.Height - Height - (longer ? 1 : 0), longer ? 2 : 1);
        if (longer)
        {
            sheet.Clear(rows);
        }

        sheet.PutParagraph(rows, 0, text, ink);
    }

    private static void Entry(Sheet sheet, Area all, TextEntry entry)
    {
        // A long complaint takes two rows, and the field moves up by one.
        string complaint = $"! {entry.Complaint}";
        bool longer = entry.Complaint is not null && CellWidth.Of(complaint) > all.Width;
        Area foot = all.Rows(all.Height - Height - (longer ? 1 : 0), longer ? Height : Height - 1);
        sheet.Clear(foot);
        int start = sheet.Put(foot, 0, 0, entry.Label + ": ", Ink.Heading);
        int room = Math.Max(4, foot.Width - start - 1);

        // A long text is shown from where its caret still fits.
        int from = 0;
        while (CellWidth.Of(entry.Text[from..entry.Caret]) >= room)
        {
            from += char.IsHighSurrogate(entry.Text[from]) ? 2 : 1;
        }

        Area field = foot.Columns(start, room);
        sheet.Put(field, 0, 0, new string(sheet.Plain ? '_' : ' ', room), Ink.Entry);
        sheet.Put(field, 0, 0, entry.Text[from..], Ink.Entry);
        sheet.PlaceCursor(field, CellWidth.Of(entry.Text[from..entry.Caret]), 0);
        if (entry.Complaint is not null)
        {
            sheet.PutParagraph(foot.Rows(1), 0, complaint, Ink.Care);
            return;
        }

        string keys = entry.Waiting ? ScreenWords.Saving : entry.Options.Count > 0 ? ScreenWords.EntryKeysWithOptions : ScreenWords.EntryKeys;
        string hint = entry.Hint.Length > 0 ? entry.Hint + "   " : string.Empty;
        sheet.PutCut(foot, 0, 1, CellWidth.Of(hint + keys) <= foot.Width ? hint + keys : hint + ScreenWords.EntryKeysShort, Ink.Quiet);
    }

    private static void Keys(Sheet sheet, Area foot, BenchState state)
    {
        string own = state.Overlay != Overlay.None ? string.Empty : KeyHints.Of(state);
        int after = sheet.Put(foot, 0, 1, own, Ink.Quiet);
        if (state.Overlay == Overlay.None && foot.Width - after > ScreenWords.GeneralKeys.Length + 2)
        {
            sheet.PutEnding(foot, foot.Width, 1, ScreenWords.GeneralKeys, Ink.Quiet);
        }
        else if (foot.Width - after > 10)
        {
            sheet.PutEnding(foot, foot.Width, 1, state.Overlay == Overlay.None ? ScreenWords.HelpKey : string.Empty, Ink.Quiet);
        }
    }

    private static void Status(Sheet sheet, Area foot, BenchState state)
    {
        string saved = state.StoreTrouble is not null ? ScreenWords.NotSaved + ScreenWords.ElsewhereKey : state.Unanswered > 0 ? ScreenWords.Saving : ScreenWords.AllSaved;
        string job = state.Job?.Brief.Label ?? ScreenWords.NoJob;
        string pad = state.Pad is { } known ? $" | {ScreenWords.PadWord(known.Value)} | {ScreenWords.Budget} {Budget(state)}" : string.Empty;
        string touch = state.Clock.Stage is TouchStage.Running running
            ? ScreenWords.Touching(ClockDrawing.Figure(ClockUpdate.Since(state, running), sheet.Plain)) + " | "
            : string.Empty;
        int room = foot.Width - CellWidth.Of(touch) - CellWidth.Of(pad) - saved.Length - 4;
        sheet.Put(foot, 0, 2, $"{touch}{Sheet.Cut(job, room)}{pad}", Ink.Strong);
        sheet.PutEnding(foot, foot.Width, 2, $" {saved}", state.StoreTrouble is null ? Ink.Good : Ink.Alarm);
    }

    private static string LeaveQuestion(BenchState state) => state switch
    {
        { StoreTrouble: not null } => ScreenWords.LeaveQuestionUnsaved,
        { Clock.Stage: TouchStage.Running } => ScreenWords.LeaveQuestionDuringTouch,
        { Entry: not null } => ScreenWords.LeaveQuestionDuringEntry,
        _ => ScreenWords.LeaveQuestion,
    };

    private static string Budget(BenchState state) => state.Pad is { } pad && state.Budgets.TryGetValue(pad, out PadBudget? budget)
        ? BudgetText.Of(budget)
        : ScreenWords.BudgetUnknown;
}
