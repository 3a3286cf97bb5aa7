namespace ReworkThermal.Core.Planning;

/// <summary>What a part near the joint may bear only so much of.</summary>
public enum NeighbourStrainKind
{
    /// <summary>Its temperature.</summary>
    Temperature,

    /// <summary>The difference of temperature over its length.</summary>
    Difference,

    /// <summary>How fast it is heated.</summary>
    Rate,
}
