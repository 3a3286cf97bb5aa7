namespace ReworkThermal.Core.Verification;

/// <summary>What a published figure is about.</summary>
public enum VerificationArea
{
    /// <summary>Melting and freezing of alloys and mixed joints, and their density.</summary>
    Melting,

    /// <summary>Heat flow in solids with and without melting.</summary>
    HeatFlow,

    /// <summary>A joint on its board beside independent three-dimensional runs.</summary>
    ThreeDimensional,

    /// <summary>Times to flow that practice expects: wide, and without a source.</summary>
    Practice,

    /// <summary>Laminate, dissolved copper, plated barrels.</summary>
    Damage,

    /// <summary>Copper wires.</summary>
    Wires,
}
