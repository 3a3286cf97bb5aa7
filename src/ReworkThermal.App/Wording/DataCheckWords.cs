using System.Globalization;

namespace ReworkThermal.App.Wording;

/// <summary>Words of the data check.</summary>
internal static class DataCheckWords
{
    internal const string Title = "Check of alloys and profiles";

    internal const string Passed = "ok";

    internal const string Failed = "FAILED";

    internal const string Broken = "BROKEN";

    internal static readonly string[] Columns = ["file", "what", "result", "remark"];

    internal static string Summary(int checks, int failed, int broken) => string.Create(
        CultureInfo.InvariantCulture,
        $"{checks} checks, {failed} failed, {broken} broken.");
}
