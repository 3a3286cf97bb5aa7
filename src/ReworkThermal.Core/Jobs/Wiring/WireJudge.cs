using UnitsNet;

namespace ReworkThermal.Core.Jobs.Wiring;

/// <summary>Works out a wire at its task and judges it.</summary>
public static class WireJudge
{
    /// <summary>Judges a wire.</summary>
    /// <param name="task">What it shall do.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="limits">Limits.</param>
    /// <returns>Figures and verdict.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value of the task is outside its range.</exception>
    public static WireReport Judge(WireTask task, WireKind kind, WireLimits limits)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(limits);
        if (task.Length.Meters is <= 0 or > 1)
        {
            throw new ArgumentOutOfRangeException(nameof(task), task.Length.Millimeters, "the length must be above 0 and at most 1000 mm");
        }

        WireWarming warming = WireHeating.Steady(task.Gauge, task.Length, kind.Wall.Central, kind.Emissivity.Central, task.Current, task.Ambient);
        TemperatureDelta warm = warming is WireWarming.Settles settles ? settles.High : TemperatureDelta.Zero;
        ElectricResistance hot = CopperConductor.Resistance(task.Gauge.Section, task.Length, task.Ambient + warm);
        double dropV = task.Current.Amperes * hot.Ohms;
        double? dropShare = task.Supply is { Volts: > 0 } supply ? dropV / supply.Volts : null;
        return new WireReport(
            CopperConductor.Resistance(task.Gauge.Section, task.Length, Temperature.FromDegreesCelsius(20)),
            ElectricPotential.FromVolts(dropV),
            dropShare,
            Power.FromWatts(dropV * task.Current.Amperes),
            warming,
            FusingCurrent.Preece(task.Gauge),
            FusingCurrent.Onderdonk(task.Gauge, task.Ambient, Duration.FromSeconds(1)),
            CopperConductor.Inductance(task.Gauge, task.Length),
            Fitness(task, kind, limits, warming, dropShare),
            kind.StripsAt is not null);
    }

    private static WireFitness Fitness(WireTask task, WireKind kind, WireLimits limits, WireWarming warming, double? dropShare)
    {
        List<WireConcern> unfit = [];
        List<WireConcern> close = [];
        void Compare(WireConcern concern, double value, double strict, double central)
        {
            if (value > central)
            {
                unfit.Add(concern);
            }
            else if (value > strict)
            {
                close.Add(concern);
            }
        }

        double amperes = task.Current.Amperes;
        Compare(WireConcern.NearFusing, amperes / FusingCurrent.Preece(task.Gauge).Amperes, limits.FusingShare.Low, limits.FusingShare.Central);
        Compare(WireConcern.CurrentDensity, amperes / task.Gauge.Section.SquareMillimeters, limits.CurrentDensity.Low, limits.CurrentDensity.Central);
        if (dropShare is double share)
        {
            Compare(WireConcern.VoltageDrop, share, limits.DropShare.Low, limits.DropShare.Central);
        }

        switch (warming)
        {
            case WireWarming.Settles settles when kind.Rating is { } rating:
                // Unfit when even the cool picture is too hot; close when only the warm picture is.
                double ambientC = task.Ambient.DegreesCelsius;
                if (ambientC + settles.Low.Kelvins > rating.Low.DegreesCelsius)
                {
                    unfit.Add(WireConcern.InsulationTooHot);
                }
                else if (ambientC + settles.High.Kelvins > rating.Low.DegreesCelsius)
                {
                    close.Add(WireConcern.InsulationTooHot);
                }

                break;
            case WireWarming.Doubtful or WireWarming.Melts:
                unfit.Add(WireConcern.Melts);
                break;
            default:
                break;
        }

        if (task.CrossesBareCopper && !kind.Insulated)
        {
            unfit.Add(WireConcern.NeedsInsulation);
        }

        return unfit.Count > 0 ? new WireFitness.Unfit(unfit)
            : close.Count > 0 ? new WireFitness.Close(close)
            : new WireFitness.Fit();
    }
}
