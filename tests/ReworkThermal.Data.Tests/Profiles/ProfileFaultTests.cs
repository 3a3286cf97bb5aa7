using ReworkThermal.Data.Profiles;
using Xunit.Abstractions;

namespace ReworkThermal.Data.Tests.Profiles;

/// <summary>A profile that cannot be is refused with file, line, field and what would be right.</summary>
public sealed class ProfileFaultTests(ITestOutputHelper output) : IDisposable
{
    private readonly ShippedCopy _copy = new();

    [Theory]
    [InlineData("joints/jack-anchor-six-layer.toml", "width = \"0.8 mm\"", "width = \"1.4 mm\"", "leg.width", "does not go through a hole")]
    [InlineData("joints/jack-anchor-six-layer.toml", "top_pad = \"2.2 mm\"", "top_pad = \"3.2 mm\"", "connection", "overlaps its antipad")]
    [InlineData("joints/jack-anchor-six-layer.toml", "top_pad = \"2.2 mm\"", "top_pad = \"0.8 mm\"", "top_pad", "must be wider than the barrel's outside")]
    [InlineData("joints/jack-anchor-six-layer.toml", "diameter = \"1.1 mm\"", "diameter = \"-1.1 mm\"", "hole.diameter", "must be a finite length above 0 mm")]
    [InlineData("joints/jack-anchor-six-layer.toml", "metal = \"brass\"", "metal = \"wood\"", "leg", "known: brass, copper")]
    [InlineData("boards/six-layer-controller.toml", "thickness = \"1.6 mm\"", "thickness = \"1.0 mm\"", "thickness", "add up to")]
    [InlineData("boards/six-layer-controller.toml", "copper_layers = 6", "copper_layers = 4", "copper_layers", "says 4, but 6 copper layer(s) are listed")]
    [InlineData("boards/six-layer-controller.toml", "coverage = \"92 %\"", "coverage = \"120 %\"", "coverage", "must lie between 0 % and 100 %")]
    [InlineData("boards/six-layer-controller.toml", "laminate = \"high-tg-lead-free\"", "laminate = \"cardboard\"", "laminate", "is not a profile")]
    [InlineData("irons/heavy.toml", "source = \"CopperBody\"", "source = \"SomeBook\"", "tip_heat_capacity", "sources.toml does not list")]
    [InlineData("laminates/standard.toml", "low = \"0.81 W/mK\"", "low = \"nan W/mK\"", "in_plane_conductivity", "a number and one of the units")]
    [InlineData("metals/copper.toml", "name = \"copper\"", "name = \"copper\"\ncolour = \"red\"", "colour", "is not a field of this table")]
    public void Faulty_profile_is_refused(string file, string good, string bad, string field, string rule)
    {
        _copy.Spoil("profiles/" + file, good, bad);

        DataFileException problem = Assert.Throws<DataFileException>(() => ProfileLibrary.Load(_copy.Data));
        output.WriteLine(problem.Message);
        Assert.Contains(problem.Problems, p =>
            p.File.EndsWith(file.Replace('/', Path.DirectorySeparatorChar), StringComparison.Ordinal)
            && p.Line > 0
            && (p.Field + ": " + p.Rule).Contains(field, StringComparison.Ordinal)
            && p.Rule.Contains(rule, StringComparison.Ordinal));
    }

    public void Dispose() => _copy.Dispose();
}
