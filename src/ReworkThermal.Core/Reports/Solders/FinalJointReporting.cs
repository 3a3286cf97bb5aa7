using ReworkThermal.Core.Mixing;

namespace ReworkThermal.Core.Reports.Solders;

/// <summary>Turns refitted joints into lines of an answer.</summary>
public static class FinalJointReporting
{
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
            final.Freezing.LiquidMassFractionAt(ServiceTemperatures.Warm),
            final.Freezing.LiquidMassFractionAt(ServiceTemperatures.Hot),
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
