namespace ReworkThermal.Core.Tools;

/// <summary>How a preheater gives its heat to the underside of the board.</summary>
public enum PreheaterKind
{
    /// <summary>The board lies on a hot plate.</summary>
    HotPlate,

    /// <summary>Warm air from below.</summary>
    BottomAir,

    /// <summary>An infrared emitter below the board.</summary>
    Infrared,
}
