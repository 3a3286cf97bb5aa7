using System.Globalization;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Planning;

namespace ReworkThermal.App.Commands;

/// <summary>Shows the progress of a search on one line of standard error, if that is a terminal, and wipes the line at the end.</summary>
/// <param name="shell">Streams and manners.</param>
internal sealed class ProgressLine(Shell shell) : IProgress<PlanProgress>, IDisposable
{
    private readonly Lock _writing = new();
    private int _shownPercent = -1;

    /// <inheritdoc/>
    public void Report(PlanProgress value)
    {
        if (!shell.ShowsProgress)
        {
            return;
        }

        lock (_writing)
        {
            int percent = (int)(value.Share * 100);
            if (percent > _shownPercent)
            {
                _shownPercent = percent;
                string text = ProgressWords.Line(percent, value.Doing);
                shell.Error.Write(string.Create(CultureInfo.InvariantCulture, $"\r{SafeText.OneLine(text).PadRight(shell.Width - 1)}"));
            }
        }
    }

    /// <summary>Wipes the line.</summary>
    public void Dispose()
    {
        if (_shownPercent >= 0)
        {
            shell.Error.Write("\r" + new string(' ', shell.Width - 1) + "\r");
        }
    }
}
