using ReworkThermal.Core.Evidence;
using UnitsNet;

namespace ReworkThermal.Core.Boards;

/// <summary>One copper layer of a stack-up.</summary>
public sealed record CopperLayer
{
    /// <summary>Name for reports, for example <c>L2 ground</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Finished copper thickness, above zero. A nominal "1 oz" inner plane may be 25 µm thick.</summary>
    public required Estimate<Length> Thickness
    {
        get;
        init => field = Dimension.Positive(value, "thickness");
    }

    /// <summary>Share of the area that is copper, 0 to 1.</summary>
    public required Ratio Coverage
    {
        get;
        init => field = value.DecimalFractions is >= 0 and <= 1
            ? value
            : throw new ImpossibleGeometryException("coverage", "must lie between 0 % and 100 %");
    }

    /// <summary>Plane or signal.</summary>
    public required CopperKind Kind { get; init; }
}
