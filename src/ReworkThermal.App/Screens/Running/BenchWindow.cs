using ReworkThermal.App.Screens.Canvas;
using ReworkThermal.App.Screens.Drawing;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace ReworkThermal.App.Screens.Running;

/// <summary>
/// The one window: hands keys to the conductor and shows the picture of its state. Only cells that changed since the last picture
/// are written, so that a running clock costs next to nothing.
/// </summary>
internal sealed class BenchWindow : Runnable
{
    private static readonly TimeSpan _tickWhileTouching = TimeSpan.FromMilliseconds(100);
    private static readonly TimeSpan _tickWhileCooling = TimeSpan.FromMilliseconds(500);

    private readonly IApplication _app;
    private readonly Conductor _conductor;
    private readonly Palette _palette;
    private readonly bool _plain;
    private Picture? _next;
    private Picture? _drawn;
    private object? _timer;
    private TimeSpan _tick;

    internal BenchWindow(IApplication app, Conductor conductor, PaletteKind palette, bool plain)
    {
        _app = app;
        _conductor = conductor;
        _palette = new Palette(palette);
        _plain = plain;
        CanFocus = true;
        Width = Dim.Fill();
        Height = Dim.Fill();
        _conductor.Changed = Refresh;
        if (_app.Driver is { } driver)
        {
            driver.ClearedContents += Forget;
        }
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Z.WithCtrl)
        {
            return false;
        }

        if (KeyReading.Of(key) is { } press)
        {
            _conductor.Send(new Message.Pressed(press, _conductor.Now));
        }

        // Nothing is left to the toolkit: its Escape would end the program.
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnPaste(string text)
    {
        _conductor.Send(new Message.Pasted(text));
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        if (_next is null || _next.Width != Viewport.Width || _next.Height != Viewport.Height)
        {
            _next = Picture();
        }

        for (int row = 0; row < _next.Height; row++)
        {
            if (_next.Difference(_drawn, row) is { } changed)
            {
                DrawRow(_next, row, changed.First, changed.Last);
            }
        }

        _drawn = _next;
        return true;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _conductor.Changed = null;
            if (_app.Driver is { } driver)
            {
                driver.ClearedContents -= Forget;
            }

            if (_timer is not null)
            {
                _app.RemoveTimeout(_timer);
            }
        }

        base.Dispose(disposing);
    }

    /// <summary>Takes the terminal over again after the program was stopped: whoever had it meanwhile may have left anything on it.</summary>
    internal void TakeOver()
    {
        Tty.MakeRaw();
        if (_app.Driver is { } driver)
        {
            driver.WriteRaw(
                EscSeqUtils.CSI_SaveCursorAndActivateAltBufferNoBackscroll
                + EscSeqUtils.CSI_HideCursor
                + EscSeqUtils.CSI_EnableMouseEvents
                + EscSeqUtils.CSI_EnableBracketedPaste);
            driver.ClearContents();
        }

        _drawn = null;
        Refresh();
    }

    private void Forget(object? sender, EventArgs e) => _drawn = null;

    private Picture Picture() => BenchDrawing.Draw(_conductor.State, Viewport.Width, Viewport.Height, _plain);

    private void Refresh()
    {
        KeepTime();
        if (Viewport.Width <= 0 || Viewport.Height <= 0)
        {
            return;
        }

        _next = Picture();
        ShowCursor(_next);
        bool changed = _drawn is null;
        for (int row = 0; row < _next.Height && !changed; row++)
        {
            changed = _next.Difference(_drawn, row) is not null;
        }

        if (changed)
        {
            SetNeedsDraw();
        }
    }

    private void DrawRow(Picture picture, int row, int first, int last)
    {
        // A wide character that is cut in half must be written whole.
        int column = first > 0 && picture[row, first].Glyph.Value == 0 ? first - 1 : first;
        Move(column, row);
        while (column <= last)
        {
            Ink ink = picture[row, column].Ink;
            System.Text.StringBuilder run = new();
            while (column <= last && picture[row, column].Ink == ink)
            {
                if (picture[row, column].Glyph.Value != 0)
                {
                    run.Append(picture[row, column].Glyph);
                }

                column++;
            }

            SetAttribute(_palette[ink]);
            AddStr(run.ToString());
        }
    }

    private void ShowCursor(Picture picture)
    {
        bool shown = picture.Cursor is not null && (_plain || _conductor.State.Entry is not null);
        Cursor = new Cursor
        {
            Position = picture.Cursor is { } at && shown ? ViewportToScreen(at) : null,
            Style = shown ? CursorStyle.BlinkingBar : CursorStyle.Hidden,
        };
    }

    /// <summary>Runs a timer only while something moves by itself.</summary>
    private void KeepTime()
    {
        TimeSpan wanted = _conductor.State.Clock switch
        {
            { Stage: TouchStage.Running } => _tickWhileTouching,
            { Stage: TouchStage.Cooling cooling } when _conductor.Now.Steady - cooling.Off.Steady < ClockUpdate.MostCooling => _tickWhileCooling,
            _ => TimeSpan.Zero,
        };
        if (wanted == _tick)
        {
            return;
        }

        if (_timer is not null)
        {
            _app.RemoveTimeout(_timer);
            _timer = null;
        }

        _tick = wanted;
        if (wanted > TimeSpan.Zero)
        {
            _timer = _app.AddTimeout(wanted, () =>
            {
                _conductor.Send(new Message.Ticked(_conductor.Now));
                return _tick == wanted;
            });
        }
    }
}
