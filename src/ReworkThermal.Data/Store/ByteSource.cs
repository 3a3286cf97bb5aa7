using System.Buffers.Binary;

namespace ReworkThermal.Data.Store;

/// <summary>Reads the bytes of temperature series; every want of bytes is a <see cref="RecordFormatException"/>.</summary>
/// <param name="bytes">The bytes.</param>
internal ref struct ByteSource(ReadOnlySpan<byte> bytes)
{
    private ReadOnlySpan<byte> _rest = bytes;

    internal readonly bool AtEnd => _rest.IsEmpty;

    internal byte Byte() => Take(1)[0];

    internal ulong Varint()
    {
        ulong value = 0;
        for (int shift = 0; shift < 64; shift += 7)
        {
            byte part = Byte();
            value |= (ulong)(part & 0x7F) << shift;
            if (part < 0x80)
            {
                return value;
            }
        }

        throw new RecordFormatException("a temperature series is damaged: a number does not end");
    }

    internal int Count()
    {
        ulong count = Varint();
        return count > 0 && count <= (ulong)_rest.Length
            ? (int)count
            : throw new RecordFormatException("a temperature series is damaged: it is shorter than it says");
    }

    internal double Wide() => BinaryPrimitives.ReadDoubleLittleEndian(Take(sizeof(double)));

    internal void Wide(Span<double> values)
    {
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = Wide();
        }
    }

    private ReadOnlySpan<byte> Take(int count)
    {
        if (_rest.Length < count)
        {
            throw new RecordFormatException("a temperature series is damaged: it ends too early");
        }

        ReadOnlySpan<byte> taken = _rest[..count];
        _rest = _rest[count..];
        return taken;
    }
}
