using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Tools;

/// <summary>Contact conductance between tip and joint over the wetted area.</summary>
/// <param name="State">State of the contact.</param>
/// <param name="Conductance">Conductance per area, above zero. No published measurement of a tip on a molten bead was found; the range is wide on purpose.</param>
public sealed record TipContact(ContactState State, Estimate<HeatTransferCoefficient> Conductance);
