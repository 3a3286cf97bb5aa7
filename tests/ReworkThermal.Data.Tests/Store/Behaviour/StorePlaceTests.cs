using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.Data.Tests.Store.Behaviour;

public sealed class StorePlaceTests
{
    // XDG Base Directory Specification 0.8: relative paths in XDG_DATA_HOME are invalid and to be ignored; default $HOME/.local/share.
    [Theory]
    [InlineData(StorePlatform.Unix, "/data", "/home/a", "/data/rework-thermal/jobs.db")]
    [InlineData(StorePlatform.Unix, null, "/home/a", "/home/a/.local/share/rework-thermal/jobs.db")]
    [InlineData(StorePlatform.Unix, "", "/home/a", "/home/a/.local/share/rework-thermal/jobs.db")]
    [InlineData(StorePlatform.Unix, "data", "/home/a", "/home/a/.local/share/rework-thermal/jobs.db")]
    [InlineData(StorePlatform.MacOS, null, "/Users/a", "/Users/a/Library/Application Support/ReworkThermal/jobs.db")]
    [InlineData(StorePlatform.Windows, null, "/local", "/local/ReworkThermal/jobs.db")]
    public void The_default_place_follows_the_platform(StorePlatform platform, string? xdg, string home, string expected)
    {
        string? Look(string name) => name switch
        {
            "XDG_DATA_HOME" => xdg,
            "HOME" when platform != StorePlatform.Windows => home,
            "LOCALAPPDATA" when platform == StorePlatform.Windows => home,
            _ => null,
        };
        Assert.Equal(expected.Replace('/', Path.DirectorySeparatorChar), StorePlace.For(platform, Look).Replace('/', Path.DirectorySeparatorChar));
    }

    [Fact]
    public void Without_a_home_the_message_says_what_to_do()
    {
        JobStoreException problem = Assert.Throws<JobStoreException>(() => StorePlace.For(StorePlatform.Unix, _ => null));
        Assert.Contains("HOME", problem.Message, StringComparison.Ordinal);
        Assert.Contains("--store", problem.Message, StringComparison.Ordinal);
    }
}
