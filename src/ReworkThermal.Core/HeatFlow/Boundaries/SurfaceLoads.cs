using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Numerics;

namespace ReworkThermal.Core.HeatFlow.Boundaries;

/// <summary>What acts on the outer surfaces besides a tool: convection, radiation, imposed fluxes and imposed temperatures, each by its ledger channel.</summary>
/// <param name="surfaces">The surfaces.</param>
/// <param name="conductance">Conductance of the half cell behind each surface [W/K].</param>
internal sealed class SurfaceLoads(CellSurface[] surfaces, double[] conductance)
{
    // An imposed temperature is a film this much stronger than the half cell behind the surface: the surface misses it by a millionth.
    private const double HeldOverConductance = 1e6;

    private readonly List<Film> _films = [];
    private readonly List<Film> _radiators = [];
    private readonly List<Flux> _fluxes = [];

    /// <summary>Conductance of all films in front of each surface [W/K].</summary>
    internal double[] FilmSum { get; } = new double[surfaces.Length];

    /// <summary>Factor of the fourth power of each surface's temperature in what it radiates [W/K4].</summary>
    internal double[] RadiationSum { get; } = new double[surfaces.Length];

    /// <summary>Imposed heat flow into each surface [W].</summary>
    internal double[] Imposed { get; } = new double[surfaces.Length];

    /// <summary>T^4 with the sign of T: a trial of Newton's method may lie below absolute zero, and there too a warmer surface must send out more.</summary>
    internal static double Fourth(double kelvin) => kelvin * kelvin * kelvin * Math.Abs(kelvin);

    /// <summary>Takes everything away.</summary>
    internal void Clear()
    {
        _films.Clear();
        _radiators.Clear();
        _fluxes.Clear();
        FilmSum.AsSpan().Clear();
        RadiationSum.AsSpan().Clear();
        Imposed.AsSpan().Clear();
    }

    /// <summary>Adds a condition over part of a face.</summary>
    internal void Add(ThermalFace face, double from, double to, FaceCondition condition, int channel)
    {
        switch (condition)
        {
            case FaceCondition.Convection convection:
                double coefficient = convection.Coefficient.WattsPerSquareMeterKelvin;
                AddConvection(face, from, to, _ => coefficient, convection.Gas, channel);
                break;
            case FaceCondition.Radiation radiation:
                AddRadiation(face, from, to, radiation.ExchangeFactor, radiation.Surroundings, channel);
                break;
            case FaceCondition.Flux flux:
                double[] power = new double[surfaces.Length];
                for (int s = 0; s < power.Length; s++)
                {
                    power[s] = flux.Value.WattsPerSquareMeter * surfaces[s].AreaWithin(face, from, to);
                }

                _fluxes.Add(new Flux(power, channel));
                Dense.AddScaled(1, power, Imposed, 0, power.Length);
                break;
            case FaceCondition.Held held:
                double[] film = new double[surfaces.Length];
                for (int s = 0; s < film.Length; s++)
                {
                    film[s] = HeldOverConductance * conductance[s] * surfaces[s].AreaWithin(face, from, to) / surfaces[s].Area;
                }

                Add(new Film(film, held.Surface, channel));
                break;
            default:
                throw new ArgumentException("unknown face condition", nameof(condition));
        }
    }

    /// <summary>Adds convection over part of a face, with a coefficient [W/m2K] by the place on the face [m].</summary>
    internal void AddConvection(ThermalFace face, double from, double to, Func<double, double> coefficient, TimeCourse gas, int channel)
    {
        double[] film = new double[surfaces.Length];
        for (int s = 0; s < film.Length; s++)
        {
            film[s] = coefficient(surfaces[s].Middle) * surfaces[s].AreaWithin(face, from, to);
        }

        Add(new Film(film, gas, channel));
    }

    /// <summary>Adds radiation over part of a face: q = exchange sigma (Ts^4 - T^4).</summary>
    internal void AddRadiation(ThermalFace face, double from, double to, double exchange, TimeCourse surroundings, int channel)
    {
        double[] factor = new double[surfaces.Length];
        for (int s = 0; s < factor.Length; s++)
        {
            factor[s] = exchange * PhysicalConstants.StefanBoltzmann * surfaces[s].AreaWithin(face, from, to);
        }

        _radiators.Add(new Film(factor, surroundings, channel));
        Dense.AddScaled(1, factor, RadiationSum, 0, factor.Length);
    }

    /// <summary>Adds what the surroundings send to each surface at a time, imposed fluxes aside [W].</summary>
    internal void AddSupply(double seconds, double[] supply)
    {
        foreach (Film film in _films)
        {
            Dense.AddScaled(film.Course.KelvinAt(seconds), film.Strength, supply, 0, supply.Length);
        }

        foreach (Film radiator in _radiators)
        {
            Dense.AddScaled(Fourth(radiator.Course.KelvinAt(seconds)), radiator.Strength, supply, 0, supply.Length);
        }
    }

    /// <summary>Adds the heat flows into the body to their channels [W].</summary>
    /// <param name="seconds">Time [s].</param>
    /// <param name="kelvin">Surface temperatures [K].</param>
    /// <param name="fourth">Their fourth powers [K4].</param>
    /// <param name="channelWatts">Heat flow by channel [W], added to.</param>
    internal void Book(double seconds, double[] kelvin, double[] fourth, double[] channelWatts)
    {
        foreach (Film film in _films)
        {
            channelWatts[film.Channel] += (film.Sum * film.Course.KelvinAt(seconds)) - Dense.Dot(film.Strength, kelvin, 0, kelvin.Length);
        }

        foreach (Film radiator in _radiators)
        {
            channelWatts[radiator.Channel] += (radiator.Sum * Fourth(radiator.Course.KelvinAt(seconds))) - Dense.Dot(radiator.Strength, fourth, 0, fourth.Length);
        }

        foreach (Flux flux in _fluxes)
        {
            channelWatts[flux.Channel] += flux.Sum;
        }
    }

    private void Add(Film film)
    {
        _films.Add(film);
        Dense.AddScaled(1, film.Strength, FilmSum, 0, FilmSum.Length);
    }

    private sealed record Film(double[] Strength, TimeCourse Course, int Channel)
    {
        internal double Sum { get; } = Strength.Sum();
    }

    private sealed record Flux(double[] Power, int Channel)
    {
        internal double Sum { get; } = Power.Sum();
    }
}
