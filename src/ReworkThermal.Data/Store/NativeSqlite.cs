using System.Runtime.InteropServices;
using SQLitePCL;

namespace ReworkThermal.Data.Store;

/// <summary>The one call of SQLite that its managed layer does not offer.</summary>
internal static class NativeSqlite
{
    // From sqlite3.h; published at sqlite.org/c3ref/c_fcntl_begin_atomic_write.html.
    private const int FileControlHasMoved = 20;

    /// <summary>Whether the main file of a connection is no longer at its path.</summary>
    internal static bool HasMoved(sqlite3 connection) =>
        sqlite3_file_control(connection, "main", FileControlHasMoved, out int moved) == raw.SQLITE_OK && moved != 0;

    [DllImport("e_sqlite3", CallingConvention = CallingConvention.Cdecl, ExactSpelling = true, CharSet = CharSet.Ansi, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int sqlite3_file_control(sqlite3 connection, string schema, int operation, out int answer);
}
