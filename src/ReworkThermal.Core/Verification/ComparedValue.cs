namespace ReworkThermal.Core.Verification;

/// <summary>A published figure beside the computed one.</summary>
/// <param name="Published">The published figure.</param>
/// <param name="Computed">The computed figure in the same unit; null when the computation gave none.</param>
/// <param name="Binds">Whether the figure counts, or is for information only.</param>
public sealed record ComparedValue(PublishedValue Published, double? Computed, bool Binds)
{
    /// <summary>Computed less published, in the unit of the figure; null without a computed figure.</summary>
    public double? Deviation => Computed - Published.Value;

    /// <summary>Share of the room that the deviation uses up; above 1 it is outside. Infinite without a computed figure.</summary>
    public double RoomUsed => Deviation switch
    {
        null or double.NaN => double.PositiveInfinity,
        0 => 0,
        < 0 => -Deviation.Value / Published.Below,
        _ => Deviation.Value / Published.Above,
    };

    /// <summary>The verdict.</summary>
    public Agreement Agreement => !Binds ? Agreement.Informative : RoomUsed <= 1 ? Agreement.Within : Agreement.Outside;
}
