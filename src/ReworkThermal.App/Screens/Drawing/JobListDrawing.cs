using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.Drawing;

/// <summary>The list of jobs.</summary>
internal static class JobListDrawing
{
    internal static void Draw(Sheet sheet, Area body, BenchState state)
    {
        sheet.Rule(body, 0, ScreenJobWords.JobsTitle);
        if (state.Jobs.Jobs is not { Count: > 0 } jobs)
        {
            sheet.Put(body, 2, 2, state.StoreTrouble ?? (state.Jobs.Jobs is null ? ScreenJobWords.ReadingJobs : ScreenJobWords.NoJobs));
            return;
        }

        Area list = body.Rows(2);
        int first = ListWindow.First(state.Jobs.Row, jobs.Count, list.Height);
        foreach ((int row, JobHeader job) in jobs.Skip(first).Take(list.Height).Index())
        {
            sheet.PutCut(list, 2, row, ScreenJobWords.JobLine(job));
            ListWindow.Mark(sheet, list, row, first + row == state.Jobs.Row);
        }
    }
}
