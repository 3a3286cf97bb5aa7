using System.Runtime.InteropServices;

namespace ReworkThermal.App.Commands;

/// <summary>
/// A standard stream of the process that says when it cannot be written. The runtime's own passes silently over a pipe that nobody
/// reads any more.
/// </summary>
/// <param name="descriptor">1 for answers, 2 for complaints; of complaints that cannot be written nobody can be told.</param>
internal sealed partial class StandardStream(int descriptor) : Stream
{
    private const int Complaints = 2;
    private const int Interrupted = 4;
    private const int BrokenPipe = 32;
    private static readonly int _tryAgain = OperatingSystem.IsMacOS() ? 35 : 11;
    private static readonly TimeSpan _patience = TimeSpan.FromMilliseconds(10);

    // What is written to on Windows, where descriptors are none.
    private readonly Stream _onWindows = descriptor == Complaints ? Console.OpenStandardError() : Console.OpenStandardOutput();
    private bool _lost;

    /// <inheritdoc/>
    public override bool CanRead => false;

    /// <inheritdoc/>
    public override bool CanSeek => false;

    /// <inheritdoc/>
    public override bool CanWrite => true;

    /// <inheritdoc/>
    public override long Length => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    /// <inheritdoc/>
    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    /// <summary>Writes everything.</summary>
    /// <param name="buffer">The bytes.</param>
    /// <exception cref="OutputLostException">It cannot be written. This is said once; what comes later is dropped.</exception>
    public override void Write(ReadOnlySpan<byte> buffer)
    {
        if (_lost)
        {
            return;
        }

        if (!OperatingSystem.IsWindows())
        {
            WriteUnix(buffer);
            return;
        }

        try
        {
            _onWindows.Write(buffer);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            Lose(problem.Message, byReader: false);
        }
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        // Nothing is held back here.
    }

    /// <inheritdoc/>
    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    /// <inheritdoc/>
    public override void SetLength(long value) => throw new NotSupportedException();

    private unsafe void WriteUnix(ReadOnlySpan<byte> rest)
    {
        while (!rest.IsEmpty)
        {
            nint written;
            fixed (byte* first = rest)
            {
                written = WriteSome(descriptor, first, rest.Length);
            }

            if (written >= 0)
            {
                rest = rest[(int)written..];
                continue;
            }

            int problem = Marshal.GetLastPInvokeError();
            if (problem == _tryAgain)
            {
                Thread.Sleep(_patience);
            }
            else if (problem != Interrupted)
            {
                Lose(Marshal.GetPInvokeErrorMessage(problem), problem == BrokenPipe);
                return;
            }
        }
    }

    private void Lose(string why, bool byReader)
    {
        _lost = true;
        if (descriptor != Complaints)
        {
            throw new OutputLostException(why, byReader);
        }
    }

    [LibraryImport("libc", EntryPoint = "write", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static unsafe partial nint WriteSome(int descriptor, byte* bytes, nint count);

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _onWindows.Dispose();
        }

        base.Dispose(disposing);
    }
}
