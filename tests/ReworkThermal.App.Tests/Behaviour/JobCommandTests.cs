using System.Text.Json;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class JobCommandTests
{
    [Fact]
    public void A_job_resumes_where_it_was()
    {
        using JobStoreBench bench = new();
        bench.Must("job", "new", "Pump");
        Assert.Contains("job pins", bench.Json("job", "show").GetProperty("next").GetString(), StringComparison.Ordinal);
        bench.Must("job", "pins", "--pinout", "panel-jack-16");
        Assert.Contains("look at the pads", bench.Json("job", "show").GetProperty("next").GetString(), StringComparison.Ordinal);
        bench.Must("job", "look", "sound", "--pad", "1,2,3,4,5,6,7,8,9,10,11,12,13,14,15,16,S1,S2");
        JsonElement show = bench.Json("job", "show");
        Assert.Contains("choose a plan", show.GetProperty("next").GetString(), StringComparison.Ordinal);
        Assert.Contains("pad S2 seen sound", show.GetProperty("last_done")[0].GetProperty("what").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_is_found_by_label_and_by_the_beginning_of_its_identity()
    {
        using JobStoreBench bench = new();
        string id = bench.Json("job", "new", "first").GetProperty("job").GetString()!;
        bench.Must("job", "new", "second");
        Assert.Equal(2, bench.Run("job", "show").Code);
        Assert.Equal("first", bench.Json("job", "show", "--job", id[..6]).GetProperty("label").GetString());
        Assert.Equal("second", bench.Json("job", "show", "--job", "second").GetProperty("label").GetString());
        Assert.Equal(2, bench.Run("job", "show", "--job", "third").Code);
    }

    [Fact]
    public void A_closed_job_takes_nothing_until_it_is_reopened()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Must("job", "close");
        Assert.Contains("no open job", bench.Run("job", "note", "late").Error, StringComparison.Ordinal);
        Assert.Contains("closed", bench.Run("job", "note", "late", "--job", "bench job").Error, StringComparison.Ordinal);
        bench.Must("job", "reopen", "--job", "bench job", "--reason", "a pin came loose");
        bench.Must("job", "note", "now it goes");
    }

    [Theory]
    [InlineData("--joint", "no-such-joint", "no joint profile")]
    [InlineData("--board", "no-such-board", "no board profile")]
    [InlineData("--solder", "Cd50Sn50", "cadmium")]
    public void A_brief_that_names_what_is_not_there_is_refused(string option, string value, string because)
    {
        using JobStoreBench bench = new();
        BenchResult result = bench.Run("job", "new", "label", option, value);
        Assert.Equal(2, result.Code);
        Assert.Contains(because, result.Error, StringComparison.Ordinal);
        Assert.Contains("[]", bench.Must("job", "list", "--json").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_from_people_comes_out_without_controls_everywhere()
    {
        const string hostile = "\u001b[31mred\u0007\u202e <script>";
        using JobStoreBench bench = new JobStoreBench().WithDemoJob(hostile);
        bench.Must("job", "note", hostile);
        bench.Must("job", "look", "loose", "--pad", "1", "--note", hostile);
        bench.Touch("1", 245, 8, more: ["--note", hostile]);
        bench.Must("touch", "void", "5", "--reason", hostile);
        foreach (string[] words in (string[][])[["job", "list"], ["job", "show"], ["touch", "list"], ["budget", "show"], ["budget", "show", "--pad", "1"]])
        {
            foreach (string[] manner in (string[][])[words, [.. words, "--json"]])
            {
                BenchResult result = bench.Must(manner);
                Assert.DoesNotContain(result.Out, c => c is '\u001b' or '\u0007' or '\u202e');
            }
        }
    }

    [Fact]
    public void Pins_go_out_to_a_file_and_come_back_the_same()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        bench.Must("job", "look", "loose", "--pad", "2", "--note", "corner up");
        string file = Path.Combine(bench.Folder.Path, "pins.csv");
        bench.Must("job", "pins", "--to", file);
        Assert.Contains("exists already", bench.Run("job", "pins", "--to", file).Error, StringComparison.Ordinal);
        string written = File.ReadAllText(file);
        bench.Must("job", "new", "twin");
        bench.Must("job", "pins", "--from", file, "--job", "twin");
        bench.Must("job", "pins", "--to", file, "--job", "twin", "--force");
        Assert.Equal(written, File.ReadAllText(file));
    }
}
