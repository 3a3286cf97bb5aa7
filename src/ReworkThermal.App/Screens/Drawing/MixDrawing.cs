using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>The mix: lines to change on the left, figures on the right, the melt curve below.</summary>
internal static class MixDrawing
{
    private const int LeftColumns = 43;
    private const int ValueColumn = 19;
    private const int SliderLength = 10;

    internal static void Draw(Sheet sheet, Area body, BenchState state)
    {
        int left = Math.Max(LeftColumns, body.Width / 2);
        MixField[] fields = Enum.GetValues<MixField>();
        Area form = body.Columns(0, left - 1).Rows(0, fields.Length + 1);
        sheet.Rule(form, 0, ScreenMixWords.Title);
        foreach ((int i, MixField field) in fields.Index())
        {
            sheet.Put(form, 2, 1 + i, ScreenMixWords.Field(field), Ink.Quiet);
            sheet.Put(form, ValueColumn, 1 + i, Value(state.Mix.Question, field, sheet.Plain));
            ListWindow.Mark(sheet, form, 1 + i, state.Mix.Row == i);
        }

        Area right = body.Columns(left).Rows(0, fields.Length + 1);
        Area below = body.Rows(fields.Length + 1);
        bool old = state.Mix.AnsweredTurn < state.Mix.Turn;
        sheet.Rule(right, 0, ScreenMixWords.ResultTitle + (old && state.Mix.Answer is not null ? " " + ScreenMixWords.Overtaken : string.Empty));
        switch (state.Mix.Answer)
        {
            case MixAnswer.Reckoned reckoned:
                Figures(sheet, right, reckoned.Figures);
                Curve(sheet, below, reckoned.Figures, state.Mix.Question);
                break;
            case MixAnswer.Refused refused:
                sheet.PutParagraph(right, 1, $"{ScreenMixWords.Field(refused.Field)}: {refused.Reason}", Ink.Care, 1);
                break;
            case MixAnswer.NoAnswer none:
                sheet.PutParagraph(right, 1, ScreenMixWords.NoAnswer(none.Reason), Ink.Care, 1);
                break;
            default:
                sheet.Put(right, 1, 1, state.Shelf is null ? ScreenWords.ReadingShelf : ScreenMixWords.Reckoning, Ink.Quiet);
                break;
        }
    }

    private static string Value(MixQuestion question, MixField field, bool plain) => field == MixField.SharePercent
        ? $"{MixUpdate.Text(question, field)} {ShareBar.Of(question.SharePercent / MixQuestion.MostSharePercent, SliderLength, plain)}"
        : MixUpdate.Text(question, field);

    private static void Figures(Sheet sheet, Area area, MixFigures figures)
    {
        int row = 1;
        Figure(ScreenMixWords.Flow, ScreenMixWords.Celsius(figures.FlowC, figures.UncertaintyK), Ink.Strong);
        Figure(ScreenMixWords.Liquidus, ScreenMixWords.Celsius(figures.LiquidusC, figures.UncertaintyK), Ink.Plain);
        Figure(ScreenMixWords.Solidus, ScreenMixWords.Celsius(figures.SolidusC, figures.UncertaintyK), Ink.Plain);
        Figure(
            ScreenMixWords.ScheilEnd,
            figures.ScheilEndC is double end ? ScreenMixWords.Celsius(end, figures.UncertaintyK) : ScreenMixWords.NoScheil,
            Ink.Plain);
        sheet.Put(area, 1, row++, figures is { JointMg: double joint, AddedMg: double added } ? ScreenMixWords.Amount(joint, added) : ScreenMixWords.NoAmount, Ink.Strong);
        if (figures.Residue is not { } residue)
        {
            sheet.Put(area, 1, row, ScreenMixWords.NoResidue, Ink.Quiet);
            return;
        }

        sheet.Put(area, 1, row++, ScreenMixWords.Residue(residue.Share));
        sheet.Put(area, 1, row++, ScreenMixWords.StillLiquid(residue.LiquidAt100, residue.LiquidAt140));
        sheet.Put(area, 1, row, ScreenMixWords.Needed(residue.PassesNeeded, MixQuestion.MostPasses), residue.PassesNeeded is null ? Ink.Care : Ink.Plain);

        void Figure(string name, string text, Ink ink)
        {
            sheet.Put(area, 1, row, name, Ink.Quiet);
            sheet.Put(area, 12, row++, text, ink);
        }
    }

    private static void Curve(Sheet sheet, Area below, MixFigures figures, MixQuestion question)
    {
        bool roomy = below.Height >= 16;
        Area remarks = below.Rows(below.Height - (roomy ? 6 : figures.Remarks.Count == 0 ? 0 : 3));
        Area plot = below.Rows(1, below.Height - remarks.Height - 1);
        sheet.Rule(below, 0, $"{question.SharePercent:0.#} % {question.Alloy}");
        double least = Math.Floor((figures.SolidusC - 10) / 10) * 10;
        double most = Math.Ceiling((figures.LiquidusC + 10) / 10) * 10;
        List<(double Across, double Up)> points = [.. figures.Curve.Select(p => (p.Celsius, p.Liquid * 100))];
        if (points.Count > 0)
        {
            points = [(Math.Min(least, points[0].Across - 1), 0), .. points, (Math.Max(most, points[^1].Across + 1), 100)];
        }

        new CharacterPlot(sheet, plot, (least, most), (0, 100))
            .Axes(ScreenMixWords.CurveAcross, ScreenMixWords.CurveUp)
            .Upright(figures.FlowC, ScreenMixWords.FlowMark, Ink.Care, plot.Height / 2)
            .Line(points, sheet.Plain ? '*' : '●', Ink.Trace)
            .Finish();
        int row = 0;
        foreach (string remark in figures.Remarks)
        {
            if (row < remarks.Height)
            {
                row = sheet.PutParagraph(remarks, row, remark, Ink.Care, 1);
            }
        }
    }
}
