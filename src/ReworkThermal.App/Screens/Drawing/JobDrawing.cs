using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>The job and its pins: a line per field, a line per pin.</summary>
internal static class JobDrawing
{
    private const int FieldColumn = 18;
    private const int BarLength = 8;
    private const int ShortBarLength = 4;
    private const int Wide = 100;

    // Columns of the pin table: name, destination, arrived, now, heat before, budget, touches.
    private static readonly int[] _columns = [2, 11, 25, 35, 45, 58, 84];
    private static readonly int[] _narrow = [2, 9, 21, 30, 39, 49, 68];

    internal static void Draw(Sheet sheet, Area body, BenchState state, JobState job)
    {
        sheet.Rule(body, 0, $"{ScreenJobWords.JobTitle} {ScreenJobWords.Identity(job)}");
        BriefField[] fields = Enum.GetValues<BriefField>();
        foreach ((int i, BriefField field) in fields.Index())
        {
            string text = BriefText.Of(job.Brief, field);
            sheet.Put(body, 2, 1 + i, ScreenJobWords.Field(field), Ink.Quiet);
            sheet.Put(body, FieldColumn, 1 + i, text.Length > 0 ? text : ScreenWords.Unknown, text.Length > 0 ? Ink.Plain : Ink.Quiet);
            ListWindow.Mark(sheet, body, 1 + i, state.JobPlace.Row == i);
        }

        Pins(sheet, body.Rows(fields.Length + 1), state, fields.Length);
    }

    private static void Pins(Sheet sheet, Area area, BenchState state, int before)
    {
        IReadOnlyList<PadLedger> pads = JobUpdate.Shown(state);
        sheet.Rule(area, 0, state.JobPlace.Filter.Length > 0
            ? ScreenJobWords.Filtered(pads.Count, state.Pads.Count, state.JobPlace.Filter)
            : ScreenJobWords.PinsTitle);
        if (pads.Count == 0)
        {
            sheet.Put(area, 2, 2, state.Pads.Count == 0 ? ScreenJobWords.NoPins : ScreenJobWords.NoneShown);
            return;
        }

        Headings(sheet, area);
        Area list = area.Rows(2);
        int chosen = Math.Min(state.JobPlace.Row, before + pads.Count - 1) - before;
        int first = ListWindow.First(Math.Max(0, chosen), pads.Count, list.Height);
        foreach ((int row, PadLedger pad) in pads.Skip(first).Take(list.Height).Index())
        {
            Pin(sheet, list, row, state, pad);
            ListWindow.Mark(sheet, list, row, first + row == chosen);
        }
    }

    private static void Headings(Sheet sheet, Area area)
    {
        foreach ((int i, string heading) in ScreenJobWords.Columns.Index())
        {
            sheet.Put(area, Column(area, i), 1, heading, Ink.Quiet);
        }
    }

    private static void Pin(Sheet sheet, Area list, int row, BenchState state, PadLedger pad)
    {
        sheet.Put(list.Columns(0, Column(list, 1) - 1), Column(list, 0), row, pad.Pad.Value, Ink.Strong);
        sheet.Put(list.Columns(0, Column(list, 2) - 1), Column(list, 1), row, pad.Pin?.Name ?? "-");
        sheet.Put(list, Column(list, 2), row, ScreenJobWords.State(pad.AsArrived), StateInk(pad.AsArrived));
        sheet.Put(list, Column(list, 3), row, ScreenJobWords.State(pad.State), StateInk(pad.State));
        sheet.Put(list, Column(list, 4), row, ScreenJobWords.Prior(pad.Prior));
        int at = Column(list, 5);
        PadBudget? budget = state.Budgets.GetValueOrDefault(pad.Pad);
        if (budget is PadBudget.Known known)
        {
            bool wide = list.Width >= Wide;
            at = sheet.Put(list, at, row, ShareBar.Of(known.Central, wide ? BarLength : ShortBarLength, sheet.Plain) + " ", Ink.Trace);
            sheet.Put(list, at, row, wide ? BudgetText.Of(known) : BudgetText.Short(known));
        }
        else
        {
            sheet.Put(list.Columns(0, Column(list, 6) - 1), at, row, (budget as PadBudget.Unknown)?.Reason ?? "...", Ink.Quiet);
        }

        sheet.Put(list, Column(list, 6), row, ScreenJobWords.Touches(pad));
    }

    private static Ink StateInk(PadState? state) => state switch
    {
        PadState.Sound or PadState.Wired => Ink.Good,
        PadState.Loose => Ink.Care,
        PadState.Missing => Ink.Alarm,
        _ => Ink.Plain,
    };

    private static int Column(Area area, int index) => area.Width >= Wide ? _columns[index] : _narrow[index];
}
