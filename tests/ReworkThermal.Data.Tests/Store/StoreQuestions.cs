using System.Globalization;
using Microsoft.Data.Sqlite;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store;

internal static class StoreQuestions
{
    /// <summary>One answer of SQLite as text.</summary>
    internal static string Ask(this SqliteJobStore store, string sql)
    {
        using SqliteCommand command = store.Connection.CreateCommand();
#pragma warning disable CA2100 // Constants of the tests.
        command.CommandText = sql;
#pragma warning restore CA2100
        return Convert.ToString(command.ExecuteScalar(), CultureInfo.InvariantCulture) ?? string.Empty;
    }
}
