namespace ReworkThermal.Core.Composition;

/// <summary>
/// The chemical elements whose phase equilibria are modelled. Start reading this room here: an element is an index,
/// <see cref="MassFractions"/> is a composition by mass, <see cref="MoleFractions"/> by amount, and
/// <see cref="AlloyDesignation"/> turns text into a composition.
/// </summary>
public enum Element
{
    /// <summary>Silver.</summary>
    Ag,

    /// <summary>Gold.</summary>
    Au,

    /// <summary>Bismuth.</summary>
    Bi,

    /// <summary>Copper.</summary>
    Cu,

    /// <summary>Indium.</summary>
    In,

    /// <summary>Lead.</summary>
    Pb,

    /// <summary>Antimony.</summary>
    Sb,

    /// <summary>Tin.</summary>
    Sn,

    /// <summary>Zinc.</summary>
    Zn,
}
