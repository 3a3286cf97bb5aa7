using System.Buffers.Binary;
using System.IO.Compression;

namespace ReworkThermal.App.Rendering.Charts;

/// <summary>Writes Portable Network Graphics files (ISO/IEC 15948): 8-bit colour, no interlace, one data chunk.</summary>
internal static class PngFile
{
    private const int BytesPerPixel = 3;

    private static readonly byte[] _signature = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    private static readonly uint[] _crcTable = [.. Enumerable.Range(0, 256).Select(CrcOfByte)];

    /// <summary>Encodes a picture.</summary>
    /// <param name="pixels">Red, green, blue per pixel, rows from the top; width x height x 3 bytes.</param>
    /// <param name="width">Width [px].</param>
    /// <param name="height">Height [px].</param>
    /// <returns>The file.</returns>
    internal static byte[] Encode(ReadOnlySpan<byte> pixels, int width, int height)
    {
        byte[] header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        header[8] = 8; // bits per channel
        header[9] = 2; // red, green, blue
        using MemoryStream file = new();
        file.Write(_signature);
        WriteChunk(file, "IHDR"u8, header);
        WriteChunk(file, "IDAT"u8, Compressed(pixels, width, height));
        WriteChunk(file, "IEND"u8, []);
        return file.ToArray();
    }

    private static byte[] Compressed(ReadOnlySpan<byte> pixels, int width, int height)
    {
        using MemoryStream data = new();
        using (ZLibStream zlib = new(data, CompressionLevel.Optimal, leaveOpen: true))
        {
            for (int row = 0; row < height; row++)
            {
                zlib.WriteByte(0); // no filter on this row
                zlib.Write(pixels.Slice(row * width * BytesPerPixel, width * BytesPerPixel));
            }
        }

        return data.ToArray();
    }

    private static void WriteChunk(MemoryStream file, ReadOnlySpan<byte> kind, ReadOnlySpan<byte> content)
    {
        byte[] chunk = new byte[12 + content.Length];
        BinaryPrimitives.WriteInt32BigEndian(chunk, content.Length);
        kind.CopyTo(chunk.AsSpan(4));
        content.CopyTo(chunk.AsSpan(8));
        uint crc = uint.MaxValue;
        foreach (byte b in chunk.AsSpan(4, 4 + content.Length))
        {
            crc = _crcTable[(crc ^ b) & 0xFF] ^ (crc >> 8);
        }

        BinaryPrimitives.WriteUInt32BigEndian(chunk.AsSpan(8 + content.Length), ~crc);
        file.Write(chunk);
    }

    // CRC-32 with the polynomial of ISO/IEC 15948, annex D, bits reversed.
    private static uint CrcOfByte(int value)
    {
        uint crc = (uint)value;
        for (int bit = 0; bit < 8; bit++)
        {
            crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
        }

        return crc;
    }
}
