namespace ReworkThermal.App.Rendering.Charts;

/// <summary>Which point of a text is placed.</summary>
internal enum ChartAnchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
