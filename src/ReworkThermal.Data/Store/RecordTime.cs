using System.Globalization;

namespace ReworkThermal.Data.Store;

/// <summary>Times in records: UTC, whole milliseconds, one spelling.</summary>
internal static class RecordTime
{
    private const string Format = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    internal static string Write(DateTimeOffset time) => time.UtcDateTime.ToString(Format, CultureInfo.InvariantCulture);

    internal static DateTimeOffset? Read(string text) =>
        DateTimeOffset.TryParseExact(text, Format, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset time)
            ? time
            : null;
}
