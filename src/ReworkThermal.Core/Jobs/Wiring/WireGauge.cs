using System.Globalization;
using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>
/// American wire gauge of a solid round conductor, AWG 10 to AWG 50. The diameter is 0.127 mm × 92^((36 − n)/39) by definition
/// (ASTM B258): AWG 36 is 5 mil, 0000 is 460 mil, and 39 equal ratios lie between them.
/// </summary>
public sealed record WireGauge
{
    /// <summary>Thickest gauge number accepted.</summary>
    public const int Thickest = 10;

    /// <summary>Thinnest gauge number accepted.</summary>
    public const int Thinnest = 50;

    /// <summary>Creates a gauge.</summary>
    /// <param name="number">Gauge number, 10 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside that range.</exception>
    public WireGauge(int number)
    {
        if (number is < Thickest or > Thinnest)
        {
            throw new ArgumentOutOfRangeException(nameof(number), number, "a gauge for a jumper wire lies between 10 and 50");
        }

        Number = number;
    }

    /// <summary>Gauge number; a larger number is a thinner wire.</summary>
    public int Number { get; }

    /// <summary>Diameter of the bare conductor.</summary>
    public Length Diameter => Length.FromMillimeters(0.127 * Math.Pow(92, (36 - Number) / 39.0));

    /// <summary>Cross-section of the bare conductor.</summary>
    public Area Section => Area.FromSquareMillimeters(Math.PI / 4 * Diameter.Millimeters * Diameter.Millimeters);

    /// <summary>The gauge as the trade writes it.</summary>
    /// <returns>For example <c>AWG 30</c>.</returns>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"AWG {Number}");
}
