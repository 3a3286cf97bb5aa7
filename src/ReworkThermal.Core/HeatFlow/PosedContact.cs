using UnitsNet;

namespace ReworkThermal.Core.HeatFlow;

/// <summary>A horizontal plane with a contact conductance.</summary>
/// <param name="Height">Height of the plane; must be a cell face.</param>
/// <param name="Conductance">Conductance per area, above zero.</param>
public sealed record PosedContact(Length Height, HeatTransferCoefficient Conductance);
