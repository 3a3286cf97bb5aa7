using System.CommandLine;
using System.CommandLine.Parsing;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Screens.Running;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data;

namespace ReworkThermal.App.Commands;

/// <summary>
/// The way in. Start reading the program here: a command parses its words, calls the model, and gives back a <see cref="Reply"/>;
/// this is the only place where replies and failures become text and exit codes.
/// </summary>
internal static class Front
{
    private const int MostProblems = 10;

    /// <summary>Runs one command line.</summary>
    /// <param name="words">The command line without the program's name.</param>
    /// <param name="shell">Streams, data and manners.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    internal static int Run(IReadOnlyList<string> words, Shell shell)
    {
        try
        {
            int code = Guarded(words, shell);
            shell.Out.Flush();
            foreach (DataFileProblem problem in shell.Data.LeftOut)
            {
                _ = Complain(shell, code, Refusals.LeftOut(problem.ToString()));
            }

            return code;
        }
        catch (OutputLostException lost)
        {
            return WithoutOutput(lost, kept: null, shell);
        }
    }

    private static int Guarded(IReadOnlyList<string> words, Shell shell)
    {
        try
        {
            if (words.Count == 0 && shell.Screens is not null)
            {
                // Straight to the screens: building the command line first would delay the first frame.
                return ScreensCommand.Run(new ScreenOptions(Plain: false, Light: false, Store: null), shell);
            }

            ParserConfiguration parsing = new() { EnablePosixBundling = false, ResponseFileTokenReplacer = null };
            ParseResult parse = CommandTree.Build(shell).Parse(words.Count == 0 ? ["--help"] : words, parsing);
            if (parse.Errors.Count > 0 && !AsksForHelp(parse))
            {
                return Complain(shell, ExitCode.Usage, parse.Errors[0].Message, Refusals.HelpHint(PathOf(parse.CommandResult)));
            }

            return parse.Invoke(new InvocationConfiguration
            {
                Output = shell.Out,
                Error = shell.Error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            });
        }
        catch (DataFileException broken)
        {
            return Complain(shell, ExitCode.BadData, Sentences(broken));
        }
        catch (JobStoreException trouble)
        {
            return Complain(shell, trouble.Trouble is StoreTrouble.BadImport ? ExitCode.BadData : ExitCode.StoreTrouble, trouble.Message);
        }
        catch (OperationCanceledException) when (shell.Cancellation.IsCancellationRequested)
        {
            return Complain(shell, ExitCode.BrokenOff, Refusals.BrokenOff);
        }
#pragma warning disable CA1031 // The last resort: whatever went wrong, the user gets a sentence, not a stack trace.
        catch (Exception fault) when (fault is not OutputLostException)
#pragma warning restore CA1031
        {
            return Complain(shell, ExitCode.ProgramFault, shell.ShowsTrace ? [fault.ToString()] : [Refusals.ProgramFault(fault.Message), Refusals.TraceHint]);
        }
    }

    /// <summary>Prints a reply.</summary>
    /// <param name="reply">What came of the command.</param>
    /// <param name="asJson">Whether the answer is wanted as JSON.</param>
    /// <param name="shell">Streams and manners.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    internal static int Show(Reply reply, bool asJson, Shell shell)
    {
        switch (reply)
        {
            case Reply.Answered answered:
                return Print(answered.Report, ExitCode.Done, asJson, shell);
            case Reply.AnsweredNo no:
                return Print(no.Report, ExitCode.AnswerIsNo, asJson, shell);
            case Reply.AnsweredBroken broken:
                return Print(broken.Report, ExitCode.BadData, asJson, shell);
            case Reply.AnsweredStoreTrouble trouble:
                return Print(trouble.Report, ExitCode.StoreTrouble, asJson, shell);
            case Reply.Misused misused:
                return Complain(shell, ExitCode.Usage, misused.Sentence);
            case Reply.Unusable unusable:
                return Complain(shell, ExitCode.BadData, unusable.Sentence);
            default:
                throw new ArgumentOutOfRangeException(nameof(reply));
        }
    }

    private static int Print(IRenderedReport answer, int code, bool asJson, Shell shell)
    {
        try
        {
            Write(answer, asJson, shell);
            shell.Out.Flush();
            return code;
        }
        catch (OutputLostException lost)
        {
            return WithoutOutput(lost, answer.Kept, shell);
        }
    }

    // A reader that went away has read enough; only what was kept is worth saying then.
    private static int WithoutOutput(OutputLostException lost, string? kept, Shell shell) => lost.ByReader && kept is null
        ? ExitCode.OutputLost
        : Complain(shell, ExitCode.OutputLost, Refusals.OutputLost(lost.Message, kept));

    private static void Write(IRenderedReport answer, bool asJson, Shell shell)
    {
        IRenderedReport report = shell.Data.UsedOwnFiles is { Count: > 0 } own ? new OwnDataMark(answer, own) : answer;
        if (asJson)
        {
            shell.Out.WriteLine(JsonText.Of(report));
        }
        else
        {
            report.WriteText(new Page(shell.Out, shell.Width, shell.UseColour));
        }
    }

    private static int Complain(Shell shell, int code, params IEnumerable<string> sentences)
    {
        shell.Out.Flush();
        foreach (string sentence in sentences)
        {
            shell.Error.WriteLine(SafeText.KeepingLines($"{CommandTree.ProgramName}: {sentence}"));
        }

        return code;
    }

    private static IEnumerable<string> Sentences(DataFileException broken) => broken.Problems.Count switch
    {
        0 => [broken.Message],
        > MostProblems => [.. broken.Problems.Take(MostProblems).Select(p => p.ToString()), Refusals.MoreProblems(broken.Problems.Count, MostProblems)],
        _ => broken.Problems.Select(p => p.ToString()),
    };

    private static bool AsksForHelp(ParseResult parse) => parse.Action is System.CommandLine.Help.HelpAction;

    private static string PathOf(CommandResult result)
    {
        List<string> names = [];
        for (SymbolResult? at = result; at is CommandResult command; at = at.Parent)
        {
            names.Insert(0, command.Command is RootCommand ? CommandTree.ProgramName : command.Command.Name);
        }

        return string.Join(' ', names);
    }
}
