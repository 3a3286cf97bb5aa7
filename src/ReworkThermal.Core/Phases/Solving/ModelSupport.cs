using System.Globalization;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Parameters;

namespace ReworkThermal.Core.Phases.Solving;

/// <summary>How well the data support an answer for a composition: uncertainty and caveats.</summary>
internal static class ModelSupport
{
    /// <summary>A system whose scarcest element is under this mole fraction is not mentioned.</summary>
    private const double WorthMentioning = 1e-4;

    /// <summary>Mass fraction of a trace that is not mentioned.</summary>
    private const double LeastTrace = 1e-7;

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

            foreach (SystemLimit limit in scarcest >= WorthMentioning ? Passed(system, alloy) : [])
            {
                square += limit.UncertaintyKelvin * limit.UncertaintyKelvin;
            }
        }

        double nickel = database.Nickel.KelvinFor(alloy.Nickel);
        return Math.Sqrt(square + (assessed * assessed)) + nickel;
    }

    /// <summary>How much higher [K] than computed the solidus may lie, on top of the uncertainty.</summary>
    internal static double SolidusRiseKelvin(ThermodynamicDatabase database, MassFractions alloy) =>
        database.Systems.Where(s => s.Limits.Count > 0).SelectMany(s => Passed(s, alloy)).Select(l => l.SolidusRiseKelvin).DefaultIfEmpty(0).Max();

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

            if (system.IsOwn)
            {
                caveats.Add($"{system.Title} rests on a system of your own folder.");
            }

            if (system.Caveat is { } caveat)
            {
                caveats.Add(caveat);
            }

            caveats.AddRange(Passed(system, alloy).Where(limit => limit.Answer == LimitedAnswer.Wider).Select(limit => limit.Caveat));
        }

        double others = alloy.InertTrace - alloy.Nickel;
        if (others > LeastTrace)
        {
            caveats.Add(string.Create(CultureInfo.InvariantCulture, $"{others * 100:0.###} % of trace elements is carried along without effect on melting."));
        }

        if (alloy.Nickel > LeastTrace)
        {
            caveats.Add(OnNickel(database.Nickel, alloy.Nickel));
        }

        return caveats;
    }

    /// <summary>The limit that forbids an answer or a part of it; null when everything may be said.</summary>
    internal static SystemLimit? Barrier(ThermodynamicDatabase database, MassFractions alloy)
    {
        SystemLimit? barrier = null;
        foreach (SystemDescription system in database.Systems)
        {
            if (system.Limits.Count == 0)
            {
                continue;
            }

            foreach (SystemLimit limit in Passed(system, alloy))
            {
                if (limit.Answer > (barrier?.Answer ?? LimitedAnswer.Wider))
                {
                    barrier = limit;
                }
            }
        }

        return barrier;
    }

    private static IEnumerable<SystemLimit> Passed(SystemDescription system, MassFractions alloy) =>
        system.Limits.Where(limit => limit.IsPassedBy(alloy, system.Elements));

    private static string OnNickel(NickelRule rule, double nickel)
    {
        string held = string.Create(CultureInfo.InvariantCulture, $"{rule.LeastSaturation * 100:0.##} to {rule.MostSaturation * 100:0.##} %");
        if (nickel <= rule.LeastSaturation)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{nickel * 100:0.###} % of nickel is carried along: up to saturation ({held} near 250 °C, no measurement seen) it moves melting by less than 1 K.");
        }

        double crystals = (nickel - rule.LeastSaturation) / NickelRule.InCrystals;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{nickel * 100:0.###} % of nickel: molten solder holds {held} of it near 250 °C (no measurement seen); what is above that stays as hard Ni3Sn4 or, with copper, (Cu,Ni)6Sn5 crystals, up to {crystals * 100:0.#} % of the mass, which do not melt at soldering temperature. The temperatures given are those of the rest.");
    }
}
