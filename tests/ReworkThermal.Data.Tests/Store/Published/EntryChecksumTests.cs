using System.Text;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Published;

/// <summary>CRC-32C against the examples of RFC 3720 (iSCSI), appendix B.4, and the usual check value of the digits 1 to 9.</summary>
public sealed class EntryChecksumTests
{
    [Theory]
    [InlineData(0x00, 0x8A9136AAu)]
    [InlineData(0xFF, 0x62A8AB43u)]
    public void Thirty_two_equal_bytes(int value, uint expected) =>
        Assert.Equal(expected, EntryChecksum.Of(Enumerable.Repeat((byte)value, 32).ToArray()));

    [Fact]
    public void Thirty_two_rising_and_falling_bytes()
    {
        Assert.Equal(0x46DD794Eu, EntryChecksum.Of([.. Enumerable.Range(0, 32).Select(i => (byte)i)]));
        Assert.Equal(0x113FDB5Cu, EntryChecksum.Of([.. Enumerable.Range(0, 32).Select(i => (byte)(31 - i))]));
    }

    // Catalogue check value, from memory.
    [Fact]
    public void Digits() => Assert.Equal(0xE3069283u, EntryChecksum.Of(Encoding.ASCII.GetBytes("123456789")));
}
