using ReworkThermal.Core.Composition;

namespace ReworkThermal.Data.Alloys;

/// <summary>What a file makes of a designation that stands in it.</summary>
internal static class DesignationReadings
{
    /// <summary>The composition, or the complaint about a designation that was refused.</summary>
    /// <param name="reading">What was read.</param>
    /// <param name="complaint">Makes the complaint from the reason.</param>
    internal static MassFractions OrThrow(this DesignationReading reading, Func<string, DataFileException> complaint) => reading switch
    {
        DesignationReading.Accepted accepted => accepted.Fractions,
        DesignationReading.Refused refused => throw complaint(refused.Reason),
        _ => throw new InvalidOperationException("unknown kind of reading"),
    };
}
