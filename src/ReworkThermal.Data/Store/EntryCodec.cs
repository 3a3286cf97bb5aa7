using System.Buffers;
using System.Text;
using System.Text.Json;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.Data.Store;

/// <summary>An event as it lies in the store.</summary>
/// <param name="Kind">Word for its kind.</param>
/// <param name="Body">Its fields as JSON on one line.</param>
/// <param name="Series">Its temperature series, or null.</param>
internal sealed record EntryCodec(string Kind, string Body, byte[]? Series)
{
    internal static EntryCodec Encode(JobEvent what)
    {
        ArrayBufferWriter<byte> buffer = new();
        List<InterfaceSeries> aside = [];
        using (Utf8JsonWriter json = new(buffer))
        {
            json.WriteStartObject();
            new EventWriter(json, aside).Write(what);
            json.WriteEndObject();
        }

        return new EntryCodec(EventKinds.Of(what), Encoding.UTF8.GetString(buffer.WrittenSpan), aside.Count > 0 ? SeriesBlob.Pack(aside) : null);
    }

    internal JobEvent Decode()
    {
        List<InterfaceSeries> aside = Series is null ? [] : SeriesBlob.Unpack(Series);
        try
        {
            using JsonDocument document = JsonDocument.Parse(Body);
            RecordReader fields = new(document.RootElement, string.Empty);
            JobEvent what = new EventReader(aside).Read(Kind, fields);
            fields.Finish();
            return what;
        }
        catch (JsonException problem)
        {
            throw new RecordFormatException("the record is no valid JSON: " + problem.Message, problem);
        }
    }
}
