using System.Runtime.Serialization;

namespace ReworkThermal.Core.Damage;

/// <summary>How much of the board is hot during an exposure.</summary>
public enum HeatedRegion
{
    /// <summary>One joint is heated; the board around it stays well below the glass transition.</summary>
    [EnumMember(Value = "local")]
    Local,

    /// <summary>The whole board around the joint passes the temperatures of the history, as in reflow or wave soldering.</summary>
    [EnumMember(Value = "board")]
    WholeBoard,
}
