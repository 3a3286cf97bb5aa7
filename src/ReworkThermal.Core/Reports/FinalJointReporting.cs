using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Reports;

/// <summary>Turns refitted joints into lines of an answer.</summary>
public static class FinalJointReporting
{
    private static readonly Temperature _warmService = Temperature.FromDegreesCelsius(100);

    private static readonly Temperature _hotService = Temperature.FromDegreesCelsius(140);

    /// <summary>A refitted joint.</summary>
    /// <param name="final">The joint.</param>
    /// <returns>The line.</returns>
    public static FinalJointLine Line(FinalJoint final)
    {
        ArgumentNullException.ThrowIfNull(final);
        return new FinalJointLine(
            final.Joint.Fractions,
            final.Melting.Solidus,
            final.Freezing.End,
            final.Freezing.LiquidMassFractionAt(_warmService),
            final.Freezing.LiquidMassFractionAt(_hotService),
            final.IsClean);
    }

    /// <summary>A refitted joint with its number of passes.</summary>
    /// <param name="final">The joint.</param>
    /// <returns>The line.</returns>
    public static CleaningLine CleaningLine(FinalJoint final)
    {
        ArgumentNullException.ThrowIfNull(final);
        return new CleaningLine(final.Passes, final.Residue.Amount / final.Joint.Amount, Line(final));
    }
}
