using System.CommandLine;
using System.CommandLine.Parsing;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Screens.Running;
using ReworkThermal.App.Screens.Update;
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
    /// <summary>Runs one command line.</summary>
    /// <param name="words">The command line without the program's name.</param>
    /// <param name="shell">Streams, data and manners.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    internal static int Run(IReadOnlyList<string> words, Shell shell)
    {
        int code = Guarded(words, shell);
        shell.Out.Flush();
        return code;
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
            return Complain(shell, ExitCode.BadData, broken.Problems.Count > 0 ? [.. broken.Problems.Select(p => p.ToString())] : [broken.Message]);
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
        catch (Exception fault)
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
                Print(answered.Report, asJson, shell);
                return ExitCode.Done;
            case Reply.AnsweredNo no:
                Print(no.Report, asJson, shell);
                return ExitCode.AnswerIsNo;
            case Reply.AnsweredBroken broken:
                Print(broken.Report, asJson, shell);
                return ExitCode.BadData;
            case Reply.AnsweredStoreTrouble trouble:
                Print(trouble.Report, asJson, shell);
                return ExitCode.StoreTrouble;
            case Reply.Misused misused:
                return Complain(shell, ExitCode.Usage, misused.Sentence);
            case Reply.Unusable unusable:
                return Complain(shell, ExitCode.BadData, unusable.Sentence);
            default:
                throw new ArgumentOutOfRangeException(nameof(reply));
        }
    }

    private static void Print(IRenderedReport answer, bool asJson, Shell shell)
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
