using ReworkThermal.App.Rendering;

namespace ReworkThermal.App.Commands;

/// <summary>What came of a command. <see cref="Front"/> turns it into output and an exit code.</summary>
internal abstract record Reply
{
    private Reply()
    {
    }

    /// <summary>The question was answered.</summary>
    /// <param name="Report">The answer.</param>
    internal sealed record Answered(IRenderedReport Report) : Reply;

    /// <summary>The question was answered, and the answer is "no plan" or "a check failed".</summary>
    /// <param name="Report">The answer with its reasons.</param>
    internal sealed record AnsweredNo(IRenderedReport Report) : Reply;

    /// <summary>The question was about files, and some of them cannot be used.</summary>
    /// <param name="Report">The answer with its reasons.</param>
    internal sealed record AnsweredBroken(IRenderedReport Report) : Reply;

    /// <summary>The question was about the job store, and the store is not in order.</summary>
    /// <param name="Report">The answer with its reasons.</param>
    internal sealed record AnsweredStoreTrouble(IRenderedReport Report) : Reply;

    /// <summary>The command line cannot be used.</summary>
    /// <param name="Sentence">What is wrong and what would be right.</param>
    internal sealed record Misused(string Sentence) : Reply;

    /// <summary>The input files were read but cannot be computed with.</summary>
    /// <param name="Sentence">What is wrong, where, and what would be right.</param>
    internal sealed record Unusable(string Sentence) : Reply;
}
