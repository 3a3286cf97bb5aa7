using System.Collections.Immutable;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Screens.State;

/// <summary>Texts that were being typed when the program ended before, and are offered again.</summary>
internal sealed record DraftState
{
    /// <summary>Texts not answered yet, oldest first; null until their file was read.</summary>
    internal ImmutableList<Draft>? Left { get; init; }

    /// <summary>The text being taken up, while its job is read.</summary>
    internal Draft? Taking { get; init; }

    /// <summary>Whether the offer was put off until the next start.</summary>
    internal bool PutOff { get; init; }
}
