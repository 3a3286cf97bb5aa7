using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ReworkThermal.Core.HeatFlow.Materials;
using ReworkThermal.Core.Tests.Behaviour;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>Following an enthalpy curve lands where the defining equation says, whatever the kinks on the way.</summary>
[Properties(Arbitrary = [typeof(PhasesMixSeeds)])]
public sealed class HeatFlowCaloricTableTests
{
    [Property(MaxTest = 300)]
    public Property Following_a_curve_adds_up_to_the_amount_either_way(int seed)
    {
        Random random = new(seed);
        int points = 2 + random.Next(8);
        double[] kelvin = new double[points];
        double[] enthalpy = new double[points];
        double[] liquid = new double[points];
        (kelvin[0], enthalpy[0]) = (300, 1e8);
        for (int i = 1; i < points; i++)
        {
            // From melting at one temperature to warming without melting.
            kelvin[i] = kelvin[i - 1] + Math.Pow(10, -2 + (4 * random.NextDouble()));
            enthalpy[i] = enthalpy[i - 1] + Math.Pow(10, 6 + (3 * random.NextDouble()));
            liquid[i] = (double)i / (points - 1);
        }

        CaloricTable table = new(kelvin, enthalpy, liquid);
        double span = enthalpy[^1] - enthalpy[0];
        double start = enthalpy[0] + (span * ((3 * random.NextDouble()) - 1));
        double perKelvin = random.Next(4) == 0 ? 0 : Math.Pow(10, 4 + (6 * random.NextDouble()));
        double amount = span * ((10 * random.NextDouble()) - 5);

        double rise = table.Follow(start, amount, perKelvin);

        double startK = table.TemperatureAt(start, table.PieceAt(start));
        double stored = table.EnthalpyAt(startK + rise) - start;
        double missed = stored + (perKelvin * rise) - amount;
        return (Math.Abs(missed) <= 1e-6 * (Math.Abs(amount) + span) && rise * amount >= 0).Label($"seed {seed}: missed {missed:e2} of {amount:e2}");
    }
}
