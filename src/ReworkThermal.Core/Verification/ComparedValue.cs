namespace ReworkThermal.Core.Verification;

/// <summary>A published figure beside the computed one.</summary>
/// <param name="Published">The published figure.</param>
/// <param name="Computed">The computed figure in the same unit; null when the computation gave none.</param>
/// <param name="Binds">Whether the figure counts, or is for information only.</param>
public sealed record ComparedValue(PublishedValue Published, double? Computed, bool Binds)
{
    /// <summary>The figure of a table's row beside the computed one; it counts, and may lie as far above as below.</summary>
    /// <param name="area">What it is about.</param>
    /// <param name="row">The row, with its source.</param>
    /// <param name="subject">What was measured or computed, in words.</param>
    /// <param name="unit">Unit of the figure; empty for a bare number.</param>
    /// <param name="published">The published figure.</param>
    /// <param name="room">How far the computed figure may lie to either side, in the same unit.</param>
    /// <param name="computed">The computed figure in the same unit; null when the computation gave none.</param>
    /// <param name="remark">Why the room is what it is; may be empty.</param>
    internal static ComparedValue Binding(VerificationArea area, ReferenceRow row, string subject, string unit, double published, double room, double? computed, string remark = "") =>
        new(new PublishedValue(area, row.Table, row.Line, subject, unit, published, room, room, row.Origin(), remark), computed, Binds: true);

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
