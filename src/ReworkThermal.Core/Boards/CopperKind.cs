namespace ReworkThermal.Core.Boards;

/// <summary>What a copper layer is for; decides whether it carries heat away as a sheet.</summary>
public enum CopperKind
{
    /// <summary>A continuous sheet, such as a ground or supply plane: conducts along the board as one piece.</summary>
    Plane,

    /// <summary>Interrupted tracks: hardly conducts along the board (Graebner and Azar 1997), but has its heat capacity.</summary>
    Signal,
}
