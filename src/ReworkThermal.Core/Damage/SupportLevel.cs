using System.Runtime.Serialization;

namespace ReworkThermal.Core.Damage;

/// <summary>
/// How far the literature carries a figure of the damage model. This is a separate question from where the digits were read
/// (<see cref="Evidence.EvidenceMark"/>): a digit can be read in a source and still be a judgement when used for this purpose.
/// The order matters: a greater value is weaker support.
/// </summary>
public enum SupportLevel
{
    /// <summary>Published sources give the figure or bound it closely.</summary>
    [EnumMember(Value = "supported")]
    Supported,

    /// <summary>Published sources give the form of the law, but not this number.</summary>
    [EnumMember(Value = "supported in form")]
    SupportedInForm,

    /// <summary>Chosen by the authors of this project.</summary>
    [EnumMember(Value = "judgement")]
    Judgement,
}
