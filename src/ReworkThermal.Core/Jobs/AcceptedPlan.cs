using UnitsNet;

namespace ReworkThermal.Core.Jobs;

/// <summary>The settings a technician agreed to work by.</summary>
/// <param name="Alloy">Designation of the dilution alloy, or null when none is added.</param>
/// <param name="AddedMass">Dilution alloy per joint, or null when none is added.</param>
/// <param name="IronSet">Iron set temperature, or null when no iron is used.</param>
/// <param name="PreheatSet">Board preheat temperature, or null when there is none.</param>
/// <param name="AirSet">Hot-air set temperature, or null when no air is used.</param>
/// <param name="AirFlow">Hot-air flow, or null when no air is used.</param>
/// <param name="Dwell">Planned length of a touch.</param>
/// <param name="Stop">Length at which the tool must come off.</param>
/// <param name="Passes">Add-and-wick passes, 0 to 100.</param>
/// <param name="Summary">One line for a person.</param>
public sealed record AcceptedPlan(
    string? Alloy,
    Mass? AddedMass,
    Temperature? IronSet,
    Temperature? PreheatSet,
    Temperature? AirSet,
    VolumeFlow? AirFlow,
    Duration Dwell,
    Duration Stop,
    int Passes,
    string Summary);
