using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning.Touches;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Uncertainty;

/// <summary>One bench of many: every uncertain input at some distance from its centre.</summary>
internal sealed class BenchVariation
{
    // Kelvins at the heater per kelvin at the board, at the most.
    private const double HeaterReserve = 10;

    private readonly Dictionary<InputKind, (UncertainInput Input, double Deviations)> _places = [];

    /// <summary>Creates a bench.</summary>
    /// <param name="inputs">The inputs.</param>
    /// <param name="deviations">Standard deviations from the centre, one per input.</param>
    internal BenchVariation(IReadOnlyList<UncertainInput> inputs, ReadOnlySpan<double> deviations)
    {
        for (int i = 0; i < inputs.Count; i++)
        {
            _places[inputs[i].Kind] = (inputs[i], deviations[i]);
        }
    }

    /// <summary>Solder in the joint over that of its drawn size [1].</summary>
    internal double SolderFill => Factor(InputKind.SolderFill);

    /// <summary>Flow temperature above the computed one [K].</summary>
    internal double FlowShiftK => Shift(InputKind.FlowTemperature);

    /// <summary>Joint and bench as they are on this bench.</summary>
    internal PlanRequest Applied(PlanRequest request)
    {
        Bench bench = request.Bench;
        return request with
        {
            Site = Applied(request.Site),
            Bench = bench with
            {
                Room = bench.Room with { Room = bench.Room.Room + TemperatureDelta.FromKelvins(Shift(InputKind.RoomTemperature)) },
                Contact = bench.Contact with
                {
                    AtTouchDown = Scaled(bench.Contact.AtTouchDown, InputKind.TipContact, (c, f) => c * f),
                    Wetted = Scaled(bench.Contact.Wetted, InputKind.TipContact, (c, f) => c * f),
                    WettingTime = Scaled(bench.Contact.WettingTime, InputKind.WettingTime, (t, f) => t * f),
                },
            },
        };
    }

    /// <summary>A setting as it comes out on this bench.</summary>
    internal ToolSetting Applied(ToolSetting setting)
    {
        double offset = setting.Iron is null ? 0 : Shift(InputKind.TipOffset);
        TemperatureDelta off = TemperatureDelta.FromKelvins(offset);
        return setting with
        {
            Set = setting.Set + off,
            Iron = setting.Iron is { } iron
                ? iron with
                {
                    // The dial stays within its range; the face is off by the offset.
                    LeastSetting = iron.LeastSetting + off,
                    MostSetting = iron.MostSetting + off,
                    SensorToFaceKelvinPerWatt = Scaled(iron.SensorToFaceKelvinPerWatt, InputKind.TipResistance, (r, f) => r * f),
                }
                : null,
            Preheat = setting.Preheat is { } heat ? Applied(heat) : null,
            Air = setting.Air is { } air ? Applied(air) : null,
            Assist = setting.Assist is { } help ? help with { Air = Applied(help.Air) } : null,
        };
    }

    private HotAir Applied(HotAir air) => air with
    {
        Nozzle = air.Nozzle with { ExcessKept = Scaled(air.Nozzle.ExcessKept, InputKind.AirKept, (k, f) => Math.Min(1, k * f)) },
        FilmFactor = air.FilmFactor * Factor(InputKind.AirFilm),
    };

    /// <summary>Heat from below as it comes out: the heater is set as planned and the board is elsewhere, so its limit does not stop it.</summary>
    internal BoardHeat Applied(BoardHeat heat)
    {
        double shift = Shift(InputKind.BoardTemperature);
        TemperatureDelta room = TemperatureDelta.FromKelvins(HeaterReserve * Math.Abs(shift));
        return new BoardHeat(heat.Preheater with { MostSetting = heat.Preheater.MostSetting + room }, heat.Board + TemperatureDelta.FromKelvins(shift));
    }

    private JointSite Applied(JointSite site)
    {
        double conductivity = Factor(InputKind.LaminateConductivity);
        Laminate laminate = site.Board.Laminate with
        {
            InPlaneConductivity = Scaled(site.Board.Laminate.InPlaneConductivity, conductivity, (k, f) => k * f),
            ThroughConductivity = Scaled(site.Board.Laminate.ThroughConductivity, conductivity, (k, f) => k * f),
            SpecificHeat = Scaled(site.Board.Laminate.SpecificHeat, InputKind.LaminateHeat, (c, f) => c * f),
        };
        double relief = Factor(InputKind.Relief);
        Connector? body = site.Connector is { } connector
            ? connector with { LegPathFactor = connector.LegPathFactor * Factor(InputKind.ConnectorContact) }
            : null;
        return new JointSite(
            site.Board with { Laminate = laminate, StackUp = site.Board.StackUp.WithCopperScaled(Factor(InputKind.CopperLoad)) },
            site.Joint with
            {
                Connections = [.. site.Joint.Connections.Select(c => c is PlaneConnection.Relieved r ? new PlaneConnection.Relieved(r.Spokes, r.Width * relief, r.Length) : c)],
            },
            body,
            site.Neighbours);
    }

    private double Factor(InputKind kind) => _places.TryGetValue(kind, out (UncertainInput Input, double Deviations) place) ? place.Input.FactorAt(place.Deviations) : 1;

    private double Shift(InputKind kind) => _places.TryGetValue(kind, out (UncertainInput Input, double Deviations) place) ? place.Input.At(place.Deviations) : 0;

    private Estimate<T> Scaled<T>(Estimate<T> estimate, InputKind kind, Func<T, double, T> times)
        where T : struct => Scaled(estimate, Factor(kind), times);

    private static Estimate<T> Scaled<T>(Estimate<T> estimate, double factor, Func<T, double, T> times)
        where T : struct => estimate with { Low = times(estimate.Low, factor), Central = times(estimate.Central, factor), High = times(estimate.High, factor) };
}
