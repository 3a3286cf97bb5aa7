using ReworkThermal.Core.Composition;

namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>Contents beyond which a system's parameters no longer describe the alloy, and what is answered there.</summary>
/// <param name="Above">Elements of the system with the mass fraction [kg/kg] that each must exceed for the limit to be passed.</param>
/// <param name="AmongSystem">Whether the fractions count among the system's own elements only, instead of in the whole alloy.</param>
/// <param name="Answer">What may still be said beyond the limit.</param>
/// <param name="UncertaintyKelvin">Uncertainty [K] of a melting temperature beyond it.</param>
/// <param name="SolidusRiseKelvin">How much higher [K] than computed the solidus may lie beyond it, on top of the uncertainty.</param>
/// <param name="Caveat">Sentence to print beyond it; the reason, where an answer is refused.</param>
public sealed record SystemLimit(
    IReadOnlyList<(Element Element, double MassFraction)> Above,
    bool AmongSystem,
    LimitedAnswer Answer,
    double UncertaintyKelvin,
    double SolidusRiseKelvin,
    string Caveat)
{
    /// <summary>Whether an alloy lies beyond the limit.</summary>
    internal bool IsPassedBy(MassFractions alloy, IReadOnlyList<Element> system)
    {
        double whole = 1;
        if (AmongSystem)
        {
            whole = 0;
            foreach (Element element in system)
            {
                whole += alloy[element];
            }
        }

        foreach ((Element element, double fraction) in Above)
        {
            if (!(alloy[element] > fraction * whole))
            {
                return false;
            }
        }

        return true;
    }
}
