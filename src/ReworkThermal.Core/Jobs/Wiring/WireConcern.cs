namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Why a wire does not fit its task.</summary>
public enum WireConcern
{
    /// <summary>The current is above the allowed share of the current that melts the wire.</summary>
    NearFusing,

    /// <summary>The current per cross-section is above the usual table for single wires.</summary>
    CurrentDensity,

    /// <summary>The insulation gets hotter than it bears.</summary>
    InsulationTooHot,

    /// <summary>The wire melts, or only its cool ends and radiation keep it from melting.</summary>
    Melts,

    /// <summary>Too much of the supply voltage is lost.</summary>
    VoltageDrop,

    /// <summary>A bare wire would touch bare copper.</summary>
    NeedsInsulation,
}
