using System.Buffers.Binary;
using System.IO.Compression;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Rendering.Charts;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class PngFileTests
{
    [Fact]
    public void A_picture_is_framed_as_the_standard_says()
    {
        byte[] file = RasterCanvas.Draw(new HeatView(SampleReports.Heat).ToChart());

        // ISO/IEC 15948 (PNG), 5.2: the signature; 11.2.2: the header chunk comes first and is 13 bytes long; 11.2.5: IEND is empty,
        // and its CRC is therefore the constant AE 42 60 82.
        Assert.Equal("89504E470D0A1A0A", Convert.ToHexString(file[..8]));
        Assert.Equal("0000000D49484452", Convert.ToHexString(file[8..16]));
        Assert.Equal("0000000049454E44AE426082", Convert.ToHexString(file[^12..]));
        Assert.Equal(ChartLayout.Width, BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(16)));
        Assert.Equal(ChartLayout.Height, BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(20)));
    }

    [Fact]
    public void Pixels_come_back_as_they_went_in()
    {
        byte[] pixels = [.. Enumerable.Range(0, 2 * 3 * 3).Select(i => (byte)(i * 13))];
        byte[] file = PngFile.Encode(pixels, 2, 3);
        int length = BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(33));
        using MemoryStream packed = new(file, 41, length);
        using ZLibStream zlib = new(packed, CompressionMode.Decompress);
        using MemoryStream rows = new();
        zlib.CopyTo(rows);
        byte[] expected = [0, .. pixels[..6], 0, .. pixels[6..12], 0, .. pixels[12..]];
        Assert.Equal(expected, rows.ToArray());
    }
}
