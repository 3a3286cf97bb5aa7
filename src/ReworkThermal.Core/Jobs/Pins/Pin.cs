using UnitsNet;

namespace ReworkThermal.Core.Jobs.Pins;

/// <summary>One pin of a connector as its profile describes it.</summary>
/// <param name="Number">Number printed in the pin-out; also the name of the pin's pad.</param>
/// <param name="Name">Signal name, 1 to 60 characters.</param>
/// <param name="Row">Row from 1 on, counted from one edge of the connector; rows that touch have successive numbers.</param>
/// <param name="Position">
/// Place along the row in pitches, finite; staggered rows use halves. Pins one after the other in a row are neighbours, and so are
/// pins of successive rows less than one pitch apart along the row.
/// </param>
/// <param name="Duty">What the pin is meant to be connected to.</param>
/// <param name="Current">Current it carries, or null when it is no supply pin.</param>
/// <param name="Pair">Name of the differential pair it belongs to, or null.</param>
public sealed record Pin(PadId Number, string Name, int Row, double Position, PinDuty Duty, ElectricCurrent? Current = null, string? Pair = null);
