namespace ReworkThermal.Core.Damage;

/// <summary>
/// How far the literature carries a figure of the damage model. This is a separate question from where the digits were read
/// (<see cref="Evidence.EvidenceMark"/>): a digit can be read in a source and still be a judgement when used for this purpose.
/// The order matters: a greater value is weaker support.
/// </summary>
public enum SupportLevel
{
    /// <summary>Published sources give the figure or bound it closely.</summary>
    Supported,

    /// <summary>Published sources give the form of the law, but not this number.</summary>
    SupportedInForm,

    /// <summary>Chosen by the authors of this project.</summary>
    Judgement,
}
