using System.Text.Json;
using System.Text.RegularExpressions;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed partial class ReportCommandTests
{
    private const string Hostile = "</title><script>alert(1)</script> \"quoted\" 'x' & \u001b[31m\u202e | [link](javascript:x) `code` *bold*";

    [Fact]
    public void The_same_store_gives_the_same_bytes()
    {
        using JobStoreBench bench = Worked("bench job");
        (string html, string markdown) = Write(bench, "one");
        (string again, string markdownAgain) = Write(bench, "two");
        Assert.Equal(html, again);
        Assert.Equal(markdown, markdownAgain);
    }

    [Fact]
    public void The_HTML_needs_nothing_from_outside_and_holds_every_plot_with_words()
    {
        using JobStoreBench bench = Worked("bench job");
        (string html, _) = Write(bench, "record");
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<link", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("url(", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("src=", html, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(Address().Matches(html.Replace("http://www.w3.org/2000/svg", string.Empty, StringComparison.Ordinal)));
        Assert.Equal(3, Picture().Count(html));
        Assert.Equal(3, Alternative().Count(html));
        Assert.Contains("@media print", html, StringComparison.Ordinal);
        Assert.Contains("width=device-width", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Hostile_text_stays_text()
    {
        using JobStoreBench bench = Worked(Hostile);
        bench.Must("job", "note", Hostile);
        bench.Must("job", "pad", Hostile, "--pad", "TP1");
        bench.Must("job", "look", "loose", "--pad", "2", "--note", Hostile);
        bench.Must("job", "prior", "touched", "--pad", "2", "--note", Hostile);
        bench.Touch("3", 245, 8, more: ["--note", Hostile]);
        string slip = bench.Touch("4", 245, 8, more: ["--json"]).Json().GetProperty("entry").GetRawText();
        bench.Must("touch", "void", slip, "--reason", Hostile);
        bench.Must("wire", "run", "5", "TP1", "--awg", "30", "--length", "14", "--kind", "ptfe", "--note", Hostile);
        bench.Must("checks", "pass", "--number", "1", "--note", Hostile);
        bench.Must("job", "close", "--note", Hostile);
        (string html, string markdown) = Write(bench, "record", "--job", Hostile);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<script", markdown, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(html + markdown, c => c is '\u001b' or '\u202e');
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("[link](", markdown, StringComparison.Ordinal);
        Assert.DoesNotContain("`code`", markdown.Replace("\\`", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);

        // As strict XML the pictures must hold together, whatever the pad is called.
        foreach (Match svg in Svg().Matches(html))
        {
            _ = System.Xml.Linq.XDocument.Parse(svg.Value);
        }
    }

    [Fact]
    public void Lead_that_was_brought_is_said_with_what_it_means()
    {
        using JobStoreBench bench = Worked("bench job");
        Assert.Contains("no longer lead-free", Write(bench, "record").Html, StringComparison.Ordinal);
        using JobStoreBench clean = new JobStoreBench().WithDemoJob();
        Assert.Contains("no alloy with more than 0.1 % lead", Write(clean, "record").Html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_overwrites_nothing_unless_forced()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string file = bench.Folder.Write("precious.html", "precious");
        Assert.Equal(2, bench.Run("report", "--html", file).Code);
        Assert.Equal("precious", File.ReadAllText(file));
        bench.Must("report", "--html", file, "--force");
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_files_are_written_both_or_neither()
    {
        using JobStoreBench bench = new JobStoreBench().WithDemoJob();
        string precious = bench.Folder.Write("precious.md", "precious");
        string page = Path.Combine(bench.Folder.Path, "page.html");
        Assert.Contains("exists already", bench.Run("report", "--html", page, "--markdown", precious).Error, StringComparison.Ordinal);
        Assert.False(File.Exists(page));
        Assert.Equal("precious", File.ReadAllText(precious));
        Assert.Contains("is named for two files", bench.Run("report", "--html", page, "--markdown", page).Error, StringComparison.Ordinal);
        Assert.False(File.Exists(page));
        Assert.DoesNotContain(Directory.EnumerateFiles(bench.Folder.Path), f => f.EndsWith(".part", StringComparison.Ordinal));
    }

    [Fact]
    public void A_job_without_a_joint_still_has_a_record_that_says_what_is_missing()
    {
        using JobStoreBench bench = new();
        bench.Must("job", "new", "unknown board");
        bench.Must("job", "pins", "--pinout", "panel-jack-16");
        Assert.Contains("could not be judged", Write(bench, "record").Html, StringComparison.Ordinal);
        Assert.NotEqual(JsonValueKind.Null, bench.Json("report").GetProperty("not_judged_reason").ValueKind);
    }

    [Fact]
    public void A_repair_that_is_not_proven_is_said_to_be_so()
    {
        using JobStoreBench bench = Worked("bench job");
        bench.Must("checks", "fail", "--number", "1");
        string html = Write(bench, "record").Html;
        Assert.Contains("The repair is not proven", html, StringComparison.Ordinal);
        Assert.Contains("FAILED", html, StringComparison.Ordinal);
    }

    private static JobStoreBench Worked(string label)
    {
        JobStoreBench bench = new JobStoreBench().WithDemoJob(label);
        bench.Touch("1", 245, 8, more: ["--added", "Bi58Sn42", "--added-mass", "6"]);
        bench.Touch("1", 240, 6, "2026-03-01T09:05:00Z", "--added", "Sn63Pb37", "--added-mass", "6");
        return bench;
    }

    private static (string Html, string Markdown) Write(JobStoreBench bench, string name, params string[] more)
    {
        string html = Path.Combine(bench.Folder.Path, name + ".html");
        string markdown = Path.Combine(bench.Folder.Path, name + ".md");
        bench.Must(["report", "--html", html, "--markdown", markdown, .. more]);
        return (File.ReadAllText(html), File.ReadAllText(markdown));
    }

    [GeneratedRegex("https?://")]
    private static partial Regex Address();

    [GeneratedRegex("<svg ")]
    private static partial Regex Picture();

    [GeneratedRegex("role=\"img\" aria-label=\"[^\"]{20,}\"")]
    private static partial Regex Alternative();

    [GeneratedRegex("<svg .*?</svg>", RegexOptions.Singleline)]
    private static partial Regex Svg();
}
