using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Data.Calibrations;

/// <summary>An observed touch as it is kept on disk: everything by name, so that it can be read again when profiles have been corrected.</summary>
public sealed record ObservedTouch
{
    /// <summary>Number by which it can be forgotten, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Joint profile.</summary>
    public required string Joint { get; init; }

    /// <summary>Face that the iron touched.</summary>
    public required BoardSide Side { get; init; }

    /// <summary>Room temperature.</summary>
    public required Temperature Ambient { get; init; }

    /// <summary>State of the contact of tip and joint.</summary>
    public required ContactState Contact { get; init; }

    /// <summary>Designation of the solder that was in the joint.</summary>
    public required string Solder { get; init; }

    /// <summary>Alloy that was melted into it; null for none.</summary>
    public required string? Added { get; init; }

    /// <summary>Mass of that alloy; zero for none.</summary>
    public required Mass AddedMass { get; init; }

    /// <summary>Iron profile.</summary>
    public required string Iron { get; init; }

    /// <summary>Set temperature.</summary>
    public required Temperature Set { get; init; }

    /// <summary>Preheater profile; null for none.</summary>
    public required string? Preheater { get; init; }

    /// <summary>Temperature of the settled board; null without a preheater.</summary>
    public required Temperature? Board { get; init; }

    /// <summary>Where it was recorded, when that was in a job: then it is taken over once only, and goes when the entry is voided.</summary>
    public string? Origin { get; init; }

    /// <summary>What was seen.</summary>
    public required Sighting Seen { get; init; }
}
