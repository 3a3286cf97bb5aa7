using Microsoft.Data.Sqlite;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>Turns what SQLite and the operating system say into sentences for the person at the bench.</summary>
internal static class StoreFaults
{
    // Result codes of SQLite, from its published list (sqlite.org/rescode.html).
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int Io = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int NotADatabase = 26;

    internal static JobStoreException From(SqliteException problem, string path) => problem.SqliteErrorCode switch
    {
        Busy or Locked => new(
            StoreTrouble.Busy,
            $"Another program has been writing to the job store {path} for too long; nothing was changed. Try again when it is done.",
            problem),
        ReadOnly => new(
            StoreTrouble.NotWritable,
            $"The job store {path} cannot be written: the file or its folder is read-only. Change that, or choose another place with --store.",
            problem),
        Io => new(
            StoreTrouble.DiskFull,
            $"The disk refused to read or write the job store {path}; it may be full, failing or gone. Nothing was changed; what was saved before is still there.",
            problem),
        Full => new(
            StoreTrouble.DiskFull,
            $"The disk that holds the job store {path} is full: this entry was not saved. Free some space and try again; what was saved before is intact.",
            problem),
        CannotOpen => new(
            StoreTrouble.NotWritable,
            $"The job store {path} cannot be opened: its folder is missing, read-only or not accessible. Change that, or choose another place with --store.",
            problem),
        Corrupt => Damaged(path, problem.Message, problem),
        NotADatabase => NotAStore(path, problem),
        _ => new(StoreTrouble.Unreadable, $"The job store {path} cannot be used: {problem.Message}", problem),
    };

    /// <summary>Writes what is taken out of a store.</summary>
    internal static void WriteOut(string path, OutputFiles outputs, bool force, Action<string> write)
    {
        ArgumentNullException.ThrowIfNull(outputs);
        if (outputs.Write(path, force, write) is { } complaint)
        {
            throw new JobStoreException(FileMark.Of(path) is null ? StoreTrouble.NotWritable : StoreTrouble.TargetExists, complaint);
        }
    }

    internal static JobStoreException Damaged(string path, string detail, Exception? cause = null) => new(
        StoreTrouble.Damaged,
        $"The job store {path} is damaged and was left as it is ({detail}). Bring a backup back with `store restore FILE`, which keeps this file under another name, or import an export into a new store.",
        cause);

    internal static JobStoreException NotAStore(string path, Exception? cause = null) => new(
        StoreTrouble.NotAStore,
        $"The file {path} is not a job store of this program and was left as it is. Choose another file with --store.",
        cause);

    internal static JobStoreException Empty(string path) => new(
        StoreTrouble.NotAStore,
        $"The file {path} is empty (0 bytes), which a job store never is, and was left as it is. Bring a backup back with `store restore FILE`, or delete the file to begin a new store.");

    internal static JobStoreException LogAlone(string path) => new(
        StoreTrouble.Damaged,
        $"The job store {path} is not there, but its log {path}-wal is: the store was moved or deleted without it. Put the store back, or bring a backup back with `store restore FILE`, which keeps the log.");

    internal static JobStoreException LogBeside(string path) => new(
        StoreTrouble.TargetExists,
        $"Beside {path} lies a log, {path}-wal, of a store that was there before; it would be mixed with the new file. Choose another name, or move the log away.");

    internal static JobStoreException Gone(string path) => new(
        StoreTrouble.Gone,
        $"The job store {path} was moved, deleted or replaced while it was open. Nothing more is saved there.");

    internal static JobStoreException Older(string path) => new(
        StoreTrouble.NotWritable,
        $"The job store {path} has an older format and may not be written, so that it cannot be brought up to date. Copy it to a place that can be written.");

    internal static JobStoreException Newer(string path, int version, int known) => new(
        StoreTrouble.Newer,
        string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"The job store {path} was written by a newer version of this program (format {version}; this one knows up to {known}) and was left as it is. Update the program."));

    internal static JobStoreException NoFolder(string folder, Exception cause) => new(
        StoreTrouble.NotWritable,
        $"The folder {folder} for the job store cannot be made or used: {cause.Message} Choose another place with --store.",
        cause);
}
