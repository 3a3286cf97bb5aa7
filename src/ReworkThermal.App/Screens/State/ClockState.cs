using System.Collections.Immutable;
using ReworkThermal.App.Screens.Desks;
using ReworkThermal.Core.Damage.Pulling;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Screens.State;

/// <summary>The bench clock.</summary>
internal sealed record ClockState
{
    /// <summary>Pad the tool is put on.</summary>
    internal PadId? Pad { get; init; }

    /// <summary>What the touch is for.</summary>
    internal TouchPurpose Purpose { get; init; } = TouchPurpose.Mix;

    /// <summary>Whether the touch puts in the solder that its purpose calls for.</summary>
    internal bool Adds { get; init; } = true;

    /// <summary>Iron set temperature [°C], or null.</summary>
    internal double? IronCelsius { get; init; }

    /// <summary>Iron profile, or null.</summary>
    internal string? IronName { get; init; }

    /// <summary>Nozzle profile, or null.</summary>
    internal string? NozzleName { get; init; }

    /// <summary>Preheater profile, or null.</summary>
    internal string? PreheaterName { get; init; }

    /// <summary>Hot-air set temperature [°C], or null.</summary>
    internal double? AirCelsius { get; init; }

    /// <summary>Hot-air flow [L/min], or null.</summary>
    internal double? AirLitresPerMinute { get; init; }

    /// <summary>Board temperature held by the preheater [°C], or null.</summary>
    internal double? PreheatCelsius { get; init; }

    /// <summary>Where the touch stands.</summary>
    internal TouchStage Stage { get; init; } = new TouchStage.Ready();

    /// <summary>Number of the touch, to know late answers by.</summary>
    internal int Turn { get; init; }

    /// <summary>What the simulation can say, or null while unknown.</summary>
    internal BenchForecast? Forecast { get; init; }

    /// <summary>Why there is no simulation, or null.</summary>
    internal string? NoSimulation { get; init; }

    /// <summary>How long the pad must cool after this touch, or null while unknown.</summary>
    internal CoolDown? CoolDown { get; init; }

    /// <summary>Readings of the touch in order.</summary>
    internal ImmutableList<BenchReading> Readings { get; init; } = [];

    /// <summary>Steady time of the last start or stop key, to tell a held pedal from two strokes.</summary>
    internal TimeSpan? LastStroke { get; init; }

    /// <summary>The same settings for the next touch, with nothing known of it yet.</summary>
    /// <param name="pad">Pad the tool is put on.</param>
    /// <param name="stage">Where the touch stands.</param>
    internal ClockState Next(PadId pad, TouchStage stage) => this with
    {
        Turn = Turn + 1,
        Pad = pad,
        Stage = stage,
        Forecast = null,
        NoSimulation = null,
        CoolDown = null,
        Readings = [],
    };
}
