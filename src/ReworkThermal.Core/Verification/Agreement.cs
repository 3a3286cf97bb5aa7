namespace ReworkThermal.Core.Verification;

/// <summary>How a computed figure stands beside a published one.</summary>
public enum Agreement
{
    /// <summary>Within the room of the published figure.</summary>
    Within,

    /// <summary>Outside the room of the published figure, or not computed.</summary>
    Outside,

    /// <summary>Shown for information: the published figure was not read in its source, or is known to be of another kind; the row says why.</summary>
    Informative,
}
