namespace ReworkThermal.Core.Phases.Parameters;

/// <summary>Everything the phase engine knows: pure data, read from files elsewhere. Immutable.</summary>
/// <param name="GasConstant">Gas constant the assessments used [J/mol/K].</param>
/// <param name="LowestKelvin">Lowest temperature of the pure-element functions [K].</param>
/// <param name="HighestKelvin">Highest temperature answered [K].</param>
/// <param name="Functions">Named functions of temperature.</param>
/// <param name="Phases">Phases of the model; exactly one is liquid.</param>
/// <param name="Systems">What each binary and ternary system rests on.</param>
/// <param name="Uncertainty">How to state the uncertainty of a melting temperature.</param>
/// <param name="Nickel">What is said of nickel.</param>
public sealed record ThermodynamicDatabase(
    double GasConstant,
    double LowestKelvin,
    double HighestKelvin,
    IReadOnlyList<GibbsFunction> Functions,
    IReadOnlyList<PhaseDescription> Phases,
    IReadOnlyList<SystemDescription> Systems,
    UncertaintyRule Uncertainty,
    NickelRule Nickel);
