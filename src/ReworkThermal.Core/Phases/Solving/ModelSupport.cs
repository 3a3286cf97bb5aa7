using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>How well the data support an answer for a composition: uncertainty and caveats.</summary>
internal static class ModelSupport
{
    /// <summary>A system whose scarcest element is under this mole fraction is not mentioned.</summary>
    private const double WorthMentioning = 1e-4;

    /// <summary>Half-width [K] of the range in which a melting temperature is expected.</summary>
    internal static double UncertaintyKelvin(ThermodynamicDatabase database, MassFractions alloy)
    {
        MoleFractions moles = alloy.ToMoleFractions();
        int elements = ElementData.All.Count(e => moles[e] >= WorthMentioning);
        UncertaintyRule rule = database.Uncertainty;
        double assessed = elements <= 2 ? rule.BinaryKelvin : elements == 3 ? rule.TernaryKelvin : rule.HigherKelvin;
        double square = 0;
        foreach (SystemDescription system in database.Systems)
        {
            double scarcest = system.Elements.Min(e => moles[e]);
            double kelvin = system.UncertaintyKelvin * Math.Min(1, scarcest / rule.FullWeightMoleFraction);
            if (system.Status == SystemStatus.Assessed)
            {
                assessed = Math.Max(assessed, kelvin);
            }
            else
            {
                square += kelvin * kelvin;
            }

            if (scarcest >= WorthMentioning && system.Limit is { } limit && alloy[limit.Element] > limit.MostMassFraction)
            {
                square += limit.UncertaintyKelvin * limit.UncertaintyKelvin;
            }
        }

        return Math.Sqrt(square + (assessed * assessed));
    }

    /// <summary>Sentences to print with the answer.</summary>
    internal static List<string> Caveats(ThermodynamicDatabase database, MassFractions alloy)
    {
        MoleFractions moles = alloy.ToMoleFractions();
        List<string> caveats = [];
        foreach (SystemDescription system in database.Systems)
        {
            if (system.Elements.Min(e => moles[e]) < WorthMentioning)
            {
                continue;
            }

            if (system.Caveat is { } caveat)
            {
                caveats.Add(caveat);
            }

            if (system.Limit is { } limit && alloy[limit.Element] > limit.MostMassFraction)
            {
                caveats.Add(limit.Caveat);
            }
        }

        if (alloy.InertTrace > 0)
        {
            caveats.Add(string.Create(CultureInfo.InvariantCulture, $"{alloy.InertTrace * 100:0.###} % of trace elements is carried along without effect on melting."));
        }

        return caveats;
    }
}
