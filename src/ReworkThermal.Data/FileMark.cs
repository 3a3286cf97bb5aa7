using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace ReworkThermal.Data;

/// <summary>What the file system knows a file by, whatever it is called: two names with one mark are one file.</summary>
/// <param name="IsRegular">Whether it is a plain file; folders, pipes, devices and sockets are not.</param>
/// <param name="IsFolder">Whether it is a folder.</param>
/// <param name="Size">Length in bytes.</param>
/// <param name="Device">The volume it is on.</param>
/// <param name="Number">Its number on that volume (inode; file index on Windows).</param>
internal sealed partial record FileMark(bool IsRegular, bool IsFolder, long Size, long Device, long Number)
{
    private const int KindBits = 0xF000;
    private const int RegularKind = 0x8000;
    private const int FolderKind = 0x4000;
    private const uint DiskKind = 1;

    /// <summary>Looks at a file without opening it, so that nothing can wait on a pipe.</summary>
    /// <param name="path">Any path; links are followed.</param>
    /// <returns>The mark; null when nothing is there or nothing can be known of it.</returns>
    internal static FileMark? Of(string path) => OperatingSystem.IsWindows() ? OnWindows(path) : OnUnix(path);

    /// <summary>Whether both are the same file.</summary>
    internal bool IsSameAs(FileMark other) => Device == other.Device && Number == other.Number;

    private static unsafe FileMark? OnUnix(string path)
    {
        UnixStatus status = default;
        if (Stat(path, &status) != 0)
        {
            return null;
        }

        int kind = status.Mode & KindBits;
        return new FileMark(kind == RegularKind, kind == FolderKind, status.Size, status.Dev, status.Ino);
    }

    private static FileMark? OnWindows(string path)
    {
        if (Directory.Exists(path))
        {
            return new FileMark(IsRegular: false, IsFolder: true, 0, 0, 0);
        }

        try
        {
            using SafeFileHandle file = File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            return KindOf(file) == DiskKind && InformationOf(file, out WindowsStatus status) != 0
                ? new FileMark(IsRegular: true, IsFolder: false, ((long)status.SizeHigh << 32) | status.SizeLow, status.Volume, ((long)status.IndexHigh << 32) | status.IndexLow)
                : new FileMark(IsRegular: false, IsFolder: false, 0, 0, 0);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    // The runtime's own stat: one layout on every Unix (src/native/libs/System.Native/pal_io.h, FileStatus), where libc's differs.
    [LibraryImport("libSystem.Native", EntryPoint = "SystemNative_Stat", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static unsafe partial int Stat(string path, UnixStatus* status);

    [LibraryImport("kernel32.dll", EntryPoint = "GetFileType")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static partial uint KindOf(SafeFileHandle file);

    [LibraryImport("kernel32.dll", EntryPoint = "GetFileInformationByHandle")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static partial int InformationOf(SafeFileHandle file, out WindowsStatus status);

    // Larger than the runtime's structure, so that a field added at its end cannot write past it.
    [StructLayout(LayoutKind.Explicit, Size = 256)]
    private struct UnixStatus
    {
        [FieldOffset(4)]
        internal int Mode;

        [FieldOffset(16)]
        internal long Size;

        [FieldOffset(88)]
        internal long Dev;

        [FieldOffset(104)]
        internal long Ino;
    }

    // BY_HANDLE_FILE_INFORMATION.
    [StructLayout(LayoutKind.Explicit, Size = 52)]
    private struct WindowsStatus
    {
        [FieldOffset(28)]
        internal uint Volume;

        [FieldOffset(32)]
        internal uint SizeHigh;

        [FieldOffset(36)]
        internal uint SizeLow;

        [FieldOffset(44)]
        internal uint IndexHigh;

        [FieldOffset(48)]
        internal uint IndexLow;
    }
}
