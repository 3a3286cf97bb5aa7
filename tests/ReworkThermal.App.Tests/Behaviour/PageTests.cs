using FsCheck.Xunit;
using ReworkThermal.App.Rendering;

namespace ReworkThermal.App.Tests.Behaviour;

public sealed class PageTests
{
    [Fact]
    public void A_heading_is_heavy_only_where_weight_is_welcome()
    {
        Assert.Contains("\u001b[1m", Written(page => page.Heading("heading"), useColour: true), StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', Written(page => page.Heading("heading"), useColour: false));
    }

    [Fact]
    public void Long_text_is_wrapped_between_words_and_hangs_under_its_mark()
    {
        string text = Written(page => page.Paragraph(string.Join(' ', Enumerable.Repeat("word", 30)), lead: "- "));
        string[] lines = text.TrimEnd('\n').Split('\n');
        Assert.All(lines, line => Assert.True(line.Length <= 60, line));
        Assert.StartsWith("- word", lines[0], StringComparison.Ordinal);
        Assert.All(lines[1..], line => Assert.StartsWith("  word", line, StringComparison.Ordinal));
    }

    [Property]
    public bool Nothing_written_can_steer_a_terminal(string? text)
    {
        string written = Written(page =>
        {
            page.Heading(text ?? string.Empty);
            page.Paragraph(text ?? string.Empty);
            page.Table(["", ""], [[text ?? string.Empty, text ?? string.Empty]]);
        });
        return !written.Any(c => char.IsControl(c) && c != '\n');
    }

    private static string Written(Action<Page> write, bool useColour = false)
    {
        using StringWriter output = new();
        write(new Page(output, 60, useColour));
        return output.ToString();
    }
}
