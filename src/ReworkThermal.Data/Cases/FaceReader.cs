using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Cases;

/// <summary>Reads what happens on part of a face of a posed problem.</summary>
internal static class FaceReader
{
    private const double LargeFluxWPerM2 = 1e9;

    private static readonly Temperature _coldest = Temperature.FromKelvins(0);

    private static readonly Temperature _hottest = Temperature.FromDegreesCelsius(5000);


    private static readonly Dictionary<string, Func<FieldReader, FaceCondition>> _conditions = new(StringComparer.Ordinal)
    {
        ["convection"] = table => new FaceCondition.Convection(
            table.Quantity("coefficient", UnitTable.HeatTransferCoefficients, HeatTransferCoefficient.Zero),
            Course(table)),
        ["radiation"] = table => new FaceCondition.Radiation(table.Number("exchange_factor", 0, 1), Course(table)),
        ["flux"] = table => new FaceCondition.Flux(table.Quantity(
            "value",
            UnitTable.HeatFluxes,
            HeatFlux.FromWattsPerSquareMeter(-LargeFluxWPerM2),
            HeatFlux.FromWattsPerSquareMeter(LargeFluxWPerM2))),
        ["held"] = table => new FaceCondition.Held(Course(table)),
    };

    internal static FacePatch Read(FieldReader table)
    {
        Length from = table.Quantity("from", UnitTable.Lengths, Length.Zero);
        return new FacePatch(
            table.OneOf<ThermalFace>("face"),
            from,
            table.Quantity("to", UnitTable.Lengths, from),
            table.OneOf("condition", _conditions)(table));
    }

    // A constant temperature, a ramp or a sine.
    private static TimeCourse Course(FieldReader table)
    {
        if (table.TableOrNull("ramp") is { } ramp)
        {
            return new TimeCourse.Ramp(
                ramp.Quantity("from", UnitTable.Temperatures, _coldest, _hottest),
                ramp.Quantity("to", UnitTable.Temperatures, _coldest, _hottest),
                ramp.Quantity("rate", UnitTable.TemperatureRates, TemperatureChangeRate.FromDegreesCelsiusPerSecond(1e-6)),
                ramp.Quantity("start", UnitTable.Durations, Duration.Zero));
        }

        if (table.TableOrNull("sine") is { } sine)
        {
            return new TimeCourse.Sine(
                sine.Quantity("mean", UnitTable.Temperatures, _coldest, _hottest),
                sine.Quantity("amplitude", UnitTable.TemperatureDeltas, TemperatureDelta.Zero),
                sine.Quantity("period", UnitTable.Durations, Duration.FromMilliseconds(1)));
        }

        return new TimeCourse.Constant(table.Quantity("temperature", UnitTable.Temperatures, _coldest, _hottest));
    }
}
