namespace ReworkThermal.App.Commands;

/// <summary>Exit codes; scripts rely on them, so a number once given keeps its meaning.</summary>
internal static class ExitCode
{
    /// <summary>The question was answered.</summary>
    internal const int Done = 0;

    /// <summary>The question was answered, and the answer is "no plan" or "a check failed".</summary>
    internal const int AnswerIsNo = 1;

    /// <summary>The command line cannot be used.</summary>
    internal const int Usage = 2;

    /// <summary>A file, or a value in it, cannot be used.</summary>
    internal const int BadData = 3;

    /// <summary>The job store cannot be used.</summary>
    internal const int StoreTrouble = 4;

    /// <summary>Broken off by the keyboard before there was an answer (128 + SIGINT, the shells' convention).</summary>
    internal const int BrokenOff = 130;

    /// <summary>Standard output cannot be written (the value of EX_IOERR in sysexits.h).</summary>
    internal const int OutputLost = 74;

    /// <summary>A fault of the program itself (the value of EX_SOFTWARE in sysexits.h).</summary>
    internal const int ProgramFault = 70;
}
