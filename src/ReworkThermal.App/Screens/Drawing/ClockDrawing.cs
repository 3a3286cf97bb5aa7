using System.Globalization;
using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>The bench clock: what is set on the left with the time in large figures, the trace on the right.</summary>
internal static class ClockDrawing
{
    private const int LeftColumns = 36;
    private const int WideLeftColumns = 64;
    private const int Wide = 130;

    /// <summary>A time as shown; in plain mode by whole seconds, so that a screen reader is not talked over.</summary>
    internal static string Figure(TimeSpan time, bool plain) =>
        time.TotalSeconds.ToString(plain ? "0" : "0.0", CultureInfo.InvariantCulture);

    internal static void Draw(Sheet sheet, Area body, BenchState state)
    {
        if (state.Job is not { } job)
        {
            sheet.Put(body, 2, 1, ScreenWords.OpenJobFirst);
            return;
        }

        if (job.OpenTouches.Count > 0 && state.Clock.Stage is TouchStage.Ready or TouchStage.Cooling)
        {
            Interrupted(sheet, body, job.OpenTouches);
            return;
        }

        int left = body.Width >= Wide && body.Height >= 26 ? WideLeftColumns : LeftColumns;
        Area panel = body.Columns(0, left);
        Panel(sheet, panel, state, job);
        Trace(sheet, body.Columns(left + 1), state, job);
    }

    private static void Interrupted(Sheet sheet, Area body, IReadOnlyList<Logged<TouchStart>> touches)
    {
        sheet.Rule(body, 0, ScreenClockWords.Interrupted);
        int row = 2;
        foreach (Logged<TouchStart> touch in touches)
        {
            row = sheet.PutParagraph(body, row, ScreenClockWords.OpenTouch(touch), Ink.Strong, 2);
        }

        sheet.Put(body, 2, row + 1, ScreenClockWords.OpenKeys, Ink.Care);
        sheet.PlaceCursor(body, 0, 2);
    }

    private static void Panel(Sheet sheet, Area panel, BenchState state, JobState job)
    {
        ClockState clock = state.Clock;
        sheet.Rule(panel, 0, state.Pad is { } pad ? ScreenWords.PadWord(pad.Value) : ScreenClockWords.NoPad);
        int row = 1;
        Setting("U", ScreenClockWords.PurposeName, ScreenClockWords.Purpose(clock.Purpose));
        Setting("S", ScreenClockWords.AddsName, ScreenClockWords.Added(ClockSettings.AddedFor(state, clock.Purpose)));
        Setting("I", ScreenClockWords.IronName, clock.IronCelsius is double iron ? $"{ScreenClockWords.Degrees(iron)} {clock.IronName}" : ScreenClockWords.NotUsed);
        Setting("A", ScreenClockWords.AirName, clock is { AirCelsius: double air, AirLitresPerMinute: double flow } ? $"{ScreenClockWords.Air(air, flow)} {clock.NozzleName}" : ScreenClockWords.NotUsed);
        Setting("B", ScreenClockWords.BoardName, clock.PreheatCelsius is double preheat ? $"{ScreenClockWords.Degrees(preheat)} {clock.PreheaterName}" : ScreenClockWords.NotUsed);
        sheet.Put(panel, 1, row++, job.Plan is { What: { } plan } ? ScreenClockWords.PlanTimes(plan) : ScreenClockWords.NoPlan, Ink.Quiet);
        if (job.Plan is { What: { IronSet: not null, AirSet: not null } })
        {
            sheet.Put(panel, 1, row, ScreenClockWords.AirFirst, Ink.Care);
        }

        row++;
        (string headline, string hint, Ink ink, TimeSpan time) = Headline(state, job);
        sheet.Put(panel, 1, row, headline, ink);
        sheet.PlaceCursor(panel, 1, row++);
        row = Digits(sheet, panel, row + 1, time, ink);
        row = sheet.PutParagraph(panel, row, hint, Ink.Plain, 1);
        if (clock.Stage is TouchStage.Running { FlowedAt: { } flowed })
        {
            sheet.Put(panel, 1, row++, ScreenClockWords.FlowedAt(flowed), Ink.Good);
        }

        if (clock.Forecast?.Assumed is { Count: > 0 } assumed)
        {
            sheet.PutParagraph(panel, row, ScreenClockWords.Assumed(assumed), Ink.Quiet, 1);
        }

        void Setting(string key, string name, string text)
        {
            sheet.Put(panel, 1, row, key, Ink.Quiet);
            sheet.Put(panel, 3, row, name, Ink.Quiet);
            sheet.Put(panel, 9, row++, text);
        }
    }

    private static int Digits(Sheet sheet, Area panel, int row, TimeSpan time, Ink ink)
    {
        string figure = Figure(time, sheet.Plain);
        if (sheet.Plain)
        {
            sheet.Put(panel, 1, row, $"{figure} {ScreenClockWords.Seconds}", Ink.Strong);
            return row + 2;
        }

        int scale = panel.Width >= WideLeftColumns && LargeDigits.WidthOf(figure, 2) + 2 <= panel.Width && panel.Height - row > (LargeDigits.Rows * 2) + 4 ? 2 : 1;
        LargeDigits.Draw(sheet, panel, 1, row, figure, scale, ink is Ink.Quiet ? Ink.Plain : ink == Ink.LoudAlarm ? Ink.Alarm : ink);
        sheet.Put(panel, LargeDigits.WidthOf(figure, scale) + 2, row + (LargeDigits.Rows * scale) - 1, ScreenClockWords.Seconds, Ink.Quiet);
        return row + (LargeDigits.Rows * scale) + 1;
    }

    private static (string Headline, string Hint, Ink Ink, TimeSpan Time) Headline(BenchState state, JobState job)
    {
        AcceptedPlan? plan = job.Plan?.What;
        switch (state.Clock.Stage)
        {
            case TouchStage.Running running:
                TimeSpan since = ClockUpdate.Since(state, running);
                return plan is not null && since.TotalSeconds >= plan.Stop.Seconds ? (ScreenClockWords.StopNow, ScreenClockWords.RunningHint, Ink.LoudAlarm, since)
                    : plan is not null && since.TotalSeconds >= plan.Dwell.Seconds ? (ScreenClockWords.DwellReached, ScreenClockWords.RunningHint, Ink.Care, since)
                    : (ScreenClockWords.Running, ScreenClockWords.RunningHint, Ink.Strong, since);
            case TouchStage.Released released:
                return (ScreenClockWords.Off, string.Empty, Ink.Plain, released.Length);
            case TouchStage.Cooling cooling:
                TimeSpan off = state.Now.Steady - cooling.Off.Steady;
                string wait = state.Clock.CoolDown is { } coolDown ? ScreenClockWords.Wait(coolDown, off) + " " : string.Empty;
                string hint = wait + (cooling.AsksFlow ? ScreenClockWords.AskFlow : ScreenClockWords.OffFor(cooling.Length, off));
                return (ScreenClockWords.Off, hint, Ink.Plain, cooling.Length);
            default:
                return (ScreenClockWords.Ready, ScreenClockWords.ReadyHint, Ink.Quiet, TimeSpan.Zero);
        }
    }

    private static void Trace(Sheet sheet, Area area, BenchState state, JobState job)
    {
        ClockState clock = state.Clock;
        if (clock.Forecast is not { } forecast)
        {
            sheet.Rule(area, 0);
            sheet.PutParagraph(area, 1, clock.NoSimulation is { } reason ? ScreenClockWords.NoSimulation(reason) : ScreenClockWords.NoTrace, Ink.Quiet, 1);
            return;
        }

        sheet.Rule(area, 0, ScreenClockWords.TraceTitle(forecast.WarmStartC));
        BenchReading? last = clock.Readings.Count > 0 ? clock.Readings[^1] : null;
        AcceptedPlan? plan = job.Plan?.What;
        double longest = Math.Max(Math.Max(5, last?.Seconds ?? 0), (plan?.Stop.Seconds ?? 0) * 1.15);
        double most = Math.Max(forecast.FlowC + 40, Math.Max(forecast.MostPadC ?? 0, clock.Readings.Select(r => r.PadC).DefaultIfEmpty(0).Max()) + 10);
        CharacterPlot plot = new CharacterPlot(sheet, area.Rows(1, area.Height - 4), (0, Math.Ceiling(longest)), (0, Math.Ceiling(most / 50) * 50))
            .Axes(ScreenClockWords.TraceAcross, ScreenClockWords.TraceUp)
            .Level(forecast.FlowC, ScreenClockWords.FlowLevel, Ink.Good);
        if (forecast.MostPadC is double limit)
        {
            plot.Level(limit, ScreenClockWords.PadLimit, Ink.Alarm);
        }

        if (plan is not null)
        {
            plot.Upright(plan.Dwell.Seconds, ScreenClockWords.DwellMark, Ink.Care, area.Height - 9).Upright(plan.Stop.Seconds, ScreenClockWords.StopMark, Ink.Alarm, area.Height - 8);
        }

        plot.Line([.. clock.Readings.Select(r => (r.Seconds, r.ColdestSolderC))], 'j', Ink.Plain)
            .Line([.. clock.Readings.Select(r => (r.Seconds, r.PadC))], 'p', Ink.Trace)
            .Finish();
        Area below = area.Rows(area.Height - 3);
        if (last is not null)
        {
            sheet.Put(below, 1, 0, ScreenClockWords.Temperatures(last.PadC, last.ColdestSolderC, last.Liquid), Ink.Strong);
            sheet.Put(below, 1, 2, last.Flows ? ScreenClockWords.PullNow : ScreenClockWords.DoNotPull, last.Flows ? Ink.Good : Ink.Care);
        }

        sheet.Put(below, 1, 1, ScreenClockWords.Budget(forecast.BudgetBefore, clock.Readings.FindLast(r => r.BudgetNow is not null)?.BudgetNow, forecast.BudgetAtStop));
    }
}
