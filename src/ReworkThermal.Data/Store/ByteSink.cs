using System.Buffers.Binary;

namespace ReworkThermal.Data.Store;

/// <summary>Gathers the bytes of temperature series.</summary>
internal sealed class ByteSink
{
    private readonly List<byte> _bytes = [];

    internal void Byte(byte value) => _bytes.Add(value);

    internal void Varint(ulong value)
    {
        while (value >= 0x80)
        {
            _bytes.Add((byte)(value | 0x80));
            value >>= 7;
        }

        _bytes.Add((byte)value);
    }

    internal void Wide(double value)
    {
        Span<byte> buffer = stackalloc byte[sizeof(double)];
        BinaryPrimitives.WriteDoubleLittleEndian(buffer, value);
        _bytes.AddRange(buffer);
    }

    internal void Wide(ReadOnlySpan<double> values)
    {
        foreach (double value in values)
        {
            Wide(value);
        }
    }

    internal byte[] ToArray() => [.. _bytes];
}
