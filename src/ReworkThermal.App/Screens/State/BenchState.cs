using System.Collections.Immutable;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.State;

/// <summary>
/// Everything the screens show, as one value; start reading the screens here. It never changes: <see cref="Update.BenchUpdate"/>
/// makes the next one from a message, and <see cref="Drawing.BenchDrawing"/> draws it.
/// </summary>
internal sealed record BenchState
{
    /// <summary>Place shown.</summary>
    internal Place Place { get; init; } = Place.Job;

    /// <summary>What lies over it.</summary>
    internal Overlay Overlay { get; init; }

    /// <summary>Text being typed, or null.</summary>
    internal TextEntry? Entry { get; init; }

    /// <summary>Answer to the last key.</summary>
    internal Notice Notice { get; init; } = Notice.None;

    /// <summary>Latest moment known.</summary>
    internal Moment Now { get; init; }

    /// <summary>Names in the data folders, or null while they are being read.</summary>
    internal ShelfNames? Shelf { get; init; }

    /// <summary>The jobs of the store.</summary>
    internal JobListState Jobs { get; init; } = new();

    /// <summary>The open job, or null.</summary>
    internal JobState? Job { get; init; }

    /// <summary>The job's place: chosen row and filter.</summary>
    internal JobPlaceState JobPlace { get; init; } = new();

    /// <summary>Heat budgets by pad, as far as they were reckoned.</summary>
    internal IReadOnlyDictionary<PadId, PadBudget> Budgets { get; init; } = new Dictionary<PadId, PadBudget>();

    /// <summary>The mix.</summary>
    internal MixState Mix { get; init; } = new();

    /// <summary>The plan.</summary>
    internal PlanState Plan { get; init; } = new();

    /// <summary>The bench clock.</summary>
    internal ClockState Clock { get; init; } = new();

    /// <summary>The record.</summary>
    internal RecordState Record { get; init; } = new();

    /// <summary>What was being typed when the program ended before.</summary>
    internal DraftState Drafts { get; init; } = new();

    /// <summary>Events handed to the store whose answer is due.</summary>
    internal int Unanswered { get; init; }

    /// <summary>Keys pressed while a text waits for the store, to be taken when it has answered.</summary>
    internal ImmutableList<Press> Held { get; init; } = [];

    /// <summary>Why the last thing could not be kept, or null.</summary>
    internal string? StoreTrouble { get; init; }

    /// <summary>The draft that is offered now, or null: it waits until nothing else takes the keys.</summary>
    internal Draft? DraftOnOffer => Entry is null && Overlay == Overlay.None && Jobs.Jobs is not null && Clock.Stage is not TouchStage.Running
        && Drafts is { PutOff: false, Taking: null, Left: [var first, ..] } ? first : null;

    /// <summary>Pads of the job in order; empty without a job.</summary>
    internal IReadOnlyList<PadLedger> Pads => Job is null ? [] : [.. Job.Pads.Values];

    /// <summary>The pad that the clock and the status line are about, or null when there is none.</summary>
    internal PadId? Pad => Clock.Pad is { } pad && Job?.Pads.ContainsKey(pad) == true ? pad : Pads.Count > 0 ? Pads[0].Pad : null;
}
