using System.Buffers.Binary;
using System.Numerics;
using System.Text;

namespace ReworkThermal.Data.Store;

/// <summary>
/// CRC-32C (Castagnoli) over one entry as it lies in the store, so that a byte that changed on the disk is noticed when it is read.
/// It guards against accidents, not against a person who edits the file.
/// </summary>
internal static class EntryChecksum
{
    internal static uint Of(string job, int number, long atMs, string kind, string body, ReadOnlySpan<byte> series)
    {
        uint crc = uint.MaxValue;
        crc = Add(crc, job);
        crc = BitOperations.Crc32C(crc, (uint)number);
        crc = BitOperations.Crc32C(crc, (ulong)atMs);
        crc = Add(crc, kind);
        crc = Add(crc, body);
        return ~Add(crc, series);
    }

    /// <summary>CRC-32C of bytes alone, as the published check value defines it.</summary>
    internal static uint Of(ReadOnlySpan<byte> bytes) => ~Raw(uint.MaxValue, bytes);

    private static uint Add(uint crc, string text)
    {
        int count = Encoding.UTF8.GetByteCount(text);
        Span<byte> bytes = count <= 1024 ? stackalloc byte[count] : new byte[count];
        _ = Encoding.UTF8.GetBytes(text, bytes);
        return Add(crc, bytes);
    }

    private static uint Add(uint crc, ReadOnlySpan<byte> bytes) => Raw(BitOperations.Crc32C(crc, (uint)bytes.Length), bytes);

    private static uint Raw(uint crc, ReadOnlySpan<byte> bytes)
    {
        while (bytes.Length >= sizeof(ulong))
        {
            crc = BitOperations.Crc32C(crc, BinaryPrimitives.ReadUInt64LittleEndian(bytes));
            bytes = bytes[sizeof(ulong)..];
        }

        foreach (byte value in bytes)
        {
            crc = BitOperations.Crc32C(crc, value);
        }

        return crc;
    }
}
