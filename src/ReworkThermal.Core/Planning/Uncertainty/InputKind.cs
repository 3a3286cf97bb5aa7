namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>What may differ from bench to bench.</summary>
public enum InputKind
{
    /// <summary>Contact conductance of tip and joint, wetted and at touch-down alike.</summary>
    TipContact,

    /// <summary>Time in which the contact of the tip wets.</summary>
    WettingTime,

    /// <summary>Copper that the planes carry: thickness and coverage together, as a factor.</summary>
    CopperLoad,

    /// <summary>Tip face above its setting.</summary>
    TipOffset,

    /// <summary>Resistance between the tip's sensor and its face.</summary>
    TipResistance,

    /// <summary>Conductance of the relief spokes, as a factor.</summary>
    Relief,

    /// <summary>Solder in the joint, as a factor.</summary>
    SolderFill,

    /// <summary>Flow temperature of the mix above the computed one.</summary>
    FlowTemperature,

    /// <summary>Board over the preheater above the temperature aimed at.</summary>
    BoardTemperature,

    /// <summary>Air at the board above the stated room temperature.</summary>
    RoomTemperature,

    /// <summary>Conductivity of the laminate in all directions, as a factor.</summary>
    LaminateConductivity,

    /// <summary>Specific heat of the laminate, as a factor.</summary>
    LaminateHeat,

    /// <summary>Conductance between leg and connector body.</summary>
    ConnectorContact,

    /// <summary>Share of the hot air's excess temperature that reaches the board.</summary>
    AirKept,

    /// <summary>Coefficient of the hot-air jet, as a factor.</summary>
    AirFilm,
}
