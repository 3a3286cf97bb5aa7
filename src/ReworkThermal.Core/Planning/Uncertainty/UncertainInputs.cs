using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>Gathers the inputs that are uncertain for a touch, each with its range and where the range comes from.</summary>
public static class UncertainInputs
{
    private const string Fit = "take a timed touch and add it to the calibration";

    /// <summary>Inputs that a calibration can learn, in the order in which it keeps them.</summary>
    public static IReadOnlyList<InputKind> Learnable { get; } = [InputKind.TipContact, InputKind.CopperLoad, InputKind.TipOffset];

    /// <summary>The uncertain inputs of a touch, in a fixed order.</summary>
    /// <param name="request">Joint and bench, with central values.</param>
    /// <param name="setting">How the tools are set.</param>
    /// <param name="flow">Plus or minus on the flow temperature of the solder.</param>
    /// <returns>Inputs that matter for these tools.</returns>
    public static IReadOnlyList<UncertainInput> Of(PlanRequest request, ToolSetting setting, TemperatureDelta flow)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(setting);
        BenchScatter scatter = request.Scatter;
        JointSite site = request.Site;
        List<UncertainInput> inputs = [];
        if (setting.Iron is { } iron)
        {
            TipContact contact = request.Bench.Contact;
            Estimate<HeatTransferCoefficient> reached = contact.Flux == FluxState.Spent ? contact.AtTouchDown : contact.Wetted;
            inputs.Add(Logarithmic(InputKind.TipContact, "contact of tip and joint", "W/m2K", reached, c => c.WattsPerSquareMeterKelvin, Fit));
            if (contact.Flux == FluxState.Fresh)
            {
                inputs.Add(Logarithmic(InputKind.WettingTime, "time in which the tip's contact wets", "s", contact.WettingTime, t => t.Seconds, "tin the tip and add flux"));
            }
        }

        inputs.Add(CopperLoad(site.Board.StackUp, scatter.PlaneCoverage));
        if (setting.Iron is { } tip)
        {
            inputs.Add(Offset(InputKind.TipOffset, "tip temperature against its setting", scatter.TipOffset, "measure the tip"));
            inputs.Add(Logarithmic(InputKind.TipResistance, "resistance from sensor to tip face", "K/W", tip.SensorToFaceKelvinPerWatt, r => r, "time how a loaded tip sags"));
        }

        if (site.Joint.Connections.Any(c => c is PlaneConnection.Relieved))
        {
            inputs.Add(Logarithmic(InputKind.Relief, "relief spokes", string.Empty, scatter.Relief, f => f, "measure the spokes on a bare board"));
        }

        inputs.Add(Logarithmic(InputKind.SolderFill, "solder in the joint", string.Empty, scatter.SolderFill, f => f, "look at both fillets"));
        inputs.Add(new UncertainInput(
            InputKind.FlowTemperature,
            "flow temperature of the mix",
            "K",
            0,
            -flow.Kelvins,
            flow.Kelvins,
            false,
            new Provenance("alloys/thermodynamics, stated uncertainty of the systems", EvidenceMark.Computed),
            "touch the mix with a thermocouple as it melts"));
        if (setting.Preheat is not null)
        {
            inputs.Add(Offset(InputKind.BoardTemperature, "board temperature over the preheater", scatter.BoardOffset, "fix a thermocouple to the board"));
        }

        inputs.Add(Offset(InputKind.RoomTemperature, "room temperature", scatter.RoomOffset, "read a thermometer at the bench"));
        Laminate laminate = site.Board.Laminate;
        inputs.Add(Logarithmic(InputKind.LaminateConductivity, "conductivity of the laminate", "W/mK", laminate.ThroughConductivity, k => k.WattsPerMeterKelvin, "find the laminate's data sheet"));
        inputs.Add(Logarithmic(InputKind.LaminateHeat, "specific heat of the laminate", "J/kgK", laminate.SpecificHeat, c => c.JoulesPerKilogramKelvin, "find the laminate's data sheet"));
        if (site is { Connector: { } body, Joint: ThroughJoint { Leg: { } leg } })
        {
            inputs.Add(Logarithmic(InputKind.ConnectorContact, "conductance from leg to connector body", "W/K", body.LegPath.Conductance(leg), g => g, "cut the leg free of the body"));
        }

        if ((setting.Air ?? setting.Assist?.Air) is { } air)
        {
            inputs.Add(Logarithmic(InputKind.AirKept, "heat that the air keeps on its way", string.Empty, air.Nozzle.ExcessKept, k => k, "hold a thermocouple in the jet at the board"));
            inputs.Add(Logarithmic(InputKind.AirFilm, "heat transfer of the jet", string.Empty, scatter.AirFilm, f => f, Fit));
        }

        return inputs;
    }

    // Conductance of a plane goes with its thickness and with its coverage; the two ranges add in quadrature.
    private static UncertainInput CopperLoad(StackUp stack, Estimate<double> coverage)
    {
        IReadOnlyList<CopperLayer> layers = stack.Copper.Any(c => c.Kind == CopperKind.Plane)
            ? [.. stack.Copper.Where(c => c.Kind == CopperKind.Plane)]
            : stack.Copper;
        double low = layers.Average(c => Math.Log(c.Thickness.Low / c.Thickness.Central));
        double high = layers.Average(c => Math.Log(c.Thickness.High / c.Thickness.Central));
        return new UncertainInput(
            InputKind.CopperLoad,
            "copper of the planes",
            string.Empty,
            1,
            Math.Exp(-Quadrature(low, Math.Log(coverage.Low))),
            Math.Exp(Quadrature(high, Math.Log(coverage.High))),
            true,
            layers[0].Thickness.Provenance,
            Fit);
    }

    private static double Quadrature(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static UncertainInput Offset(InputKind kind, string name, Estimate<TemperatureDelta> range, string learn) =>
        new(kind, name, "K", range.Central.Kelvins, range.Low.Kelvins, range.High.Kelvins, false, range.Provenance, learn);

    private static UncertainInput Logarithmic<T>(InputKind kind, string name, string unit, Estimate<T> range, Func<T, double> number, string learn)
        where T : struct
    {
        return new UncertainInput(kind, name, unit, number(range.Central), number(range.Low), number(range.High), true, range.Provenance, learn);
    }
}
