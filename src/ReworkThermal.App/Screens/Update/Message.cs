using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.State;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.Update;

/// <summary>Something that happened, to the screens or behind them.</summary>
internal abstract record Message
{
    private Message()
    {
    }

    /// <summary>A key was pressed.</summary>
    internal sealed record Pressed(Press Press, Moment At) : Message;

    /// <summary>Text was pasted.</summary>
    internal sealed record Pasted(string Text) : Message;

    /// <summary>Time went on.</summary>
    internal sealed record Ticked(Moment At) : Message;

    /// <summary>The data folders were read.</summary>
    internal sealed record ShelfRead(ShelfNames Names) : Message;

    /// <summary>The data folders cannot be used.</summary>
    internal sealed record ShelfBroken(string Reason) : Message;

    /// <summary>The store's jobs.</summary>
    internal sealed record JobsListed(IReadOnlyList<JobHeader> Jobs, JobState? Interrupted) : Message;

    /// <summary>A job was read.</summary>
    internal sealed record JobLoaded(JobState Job) : Message;

    /// <summary>What was being typed when the program ended before was read, or why it could not be.</summary>
    internal sealed record DraftsRead(IReadOnlyList<Draft> Drafts, string? Complaint) : Message;

    /// <summary>The store answered an event.</summary>
    internal sealed record Recorded(RecordOutcome Outcome, RecordedFor Purpose) : Message;

    /// <summary>The store could not do something.</summary>
    internal sealed record StoreFailed(string Reason, RecordedFor? Purpose) : Message;

    /// <summary>The record was written to a file.</summary>
    internal sealed record Exported(string Path) : Message;

    /// <summary>All jobs are in another store, which is used from now on.</summary>
    internal sealed record WrittenElsewhere(string Path) : Message;

    /// <summary>Budgets were reckoned.</summary>
    internal sealed record BudgetsReckoned(JobId Job, IReadOnlyDictionary<PadId, PadBudget> Budgets) : Message;

    /// <summary>A mix was reckoned.</summary>
    internal sealed record MixReckoned(int Turn, MixAnswer Answer) : Message;

    /// <summary>A plan run is so far.</summary>
    internal sealed record PlanMoved(int Turn, PlanProgress Progress) : Message;

    /// <summary>Plans are ranked; their sampling goes on.</summary>
    internal sealed record PlanRanked(int Turn, PlanAnswer.Answered Answer) : Message;

    /// <summary>The bench was taught, or not.</summary>
    internal sealed record Taught(LessonAnswer Answer) : Message;

    /// <summary>The record was written, or not.</summary>
    internal sealed record RecordMade(RecordAnswer Answer) : Message;

    /// <summary>A plan run ended; null when it was broken off.</summary>
    internal sealed record PlanEnded(int Turn, PlanAnswer? Answer) : Message;

    /// <summary>A simulation is ready, or there is none.</summary>
    internal sealed record RunBegun(int Turn, BenchForecast? Forecast, string? Reason) : Message;

    /// <summary>A simulated reading.</summary>
    internal sealed record RunRead(int Turn, BenchReading Reading) : Message;

    /// <summary>The simulation of a finished touch; null when there is none.</summary>
    internal sealed record RunReleased(int Turn, BenchRelease? Release) : Message;

    /// <summary>How long the pad must cool; null when that cannot be told.</summary>
    internal sealed record CoolingKnown(int Turn, CoolDown? CoolDown) : Message;

    /// <summary>Something behind the screens went wrong; the screens go on.</summary>
    internal sealed record Faulted(string Reason) : Message;
}
