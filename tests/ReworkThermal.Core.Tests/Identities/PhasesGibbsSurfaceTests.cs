using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Phases.Solving;
using ReworkThermal.Core.Tests.Published;

namespace ReworkThermal.Core.Tests.Identities;

/// <summary>What every Gibbs-energy surface must obey whatever its parameters are. Derivatives are compared with differences here only.</summary>
public sealed class PhasesGibbsSurfaceTests
{
    public static TheoryData<string> Phases()
    {
        TheoryData<string> names = [];
        foreach (string name in System().Models.Select(m => m.Name))
        {
            names.Add(name);
        }

        return names;
    }

    public static TheoryData<string> Solutions()
    {
        TheoryData<string> names = [];
        foreach (string name in System().Models.Where(m => m.Sublattices == 1 && m.Variables > 1).Select(m => m.Name))
        {
            names.Add(name);
        }

        return names;
    }

    [Theory]
    [MemberData(nameof(Phases))]
    public void Gradient_OfSurface_MatchesCentralDifferences(string phase)
    {
        foreach ((GibbsSurfaces surfaces, PhaseModel model, double[] y) in Cases(phase))
        {
            int n = model.Variables;
            double[] gradient = new double[n];
            double[] hessian = new double[n * n];
            double[] other = new double[n];
            double[] otherHessian = new double[n * n];
            surfaces.Evaluate(model, y, gradient, hessian);
            for (int v = 0; v < n; v++)
            {
                double step = 1e-5 * y[v];
                double[] up = (double[])y.Clone();
                double[] down = (double[])y.Clone();
                up[v] += step;
                down[v] -= step;
                double difference = (surfaces.Evaluate(model, up, other, otherHessian) - surfaces.Evaluate(model, down, other, otherHessian)) / (2 * step);
                Assert.Equal(gradient[v], difference, 1e-5 * (1 + Math.Abs(gradient[v])));

                double[] gradientUp = new double[n];
                double[] gradientDown = new double[n];
                surfaces.Evaluate(model, up, gradientUp, otherHessian);
                surfaces.Evaluate(model, down, gradientDown, otherHessian);
                for (int w = 0; w < n; w++)
                {
                    double curvature = (gradientUp[w] - gradientDown[w]) / (2 * step);
                    Assert.Equal(hessian[(v * n) + w], curvature, 1e-5 * (1 + Math.Abs(hessian[(v * n) + w]) + Math.Abs(gradient[w])));
                }
            }
        }
    }

    /// <summary>G = H - T S with S = -dG/dT, H checked by the Gibbs-Helmholtz relation d(G/T)/d(1/T) = H.</summary>
    [Theory]
    [MemberData(nameof(Phases))]
    public void Enthalpy_OfSurface_ObeysGibbsHelmholtz(string phase)
    {
        foreach ((GibbsSurfaces surfaces, PhaseModel model, double[] y) in Cases(phase))
        {
            double kelvin = surfaces.Kelvin;
            double[] gradient = new double[model.Variables];
            double g = surfaces.Evaluate(model, y, gradient, []);
            double enthalpy = g - surfaces.EvaluateSlope(model, y, gradient);

            // g is G/(R T), so d(G/T)/d(1/T)/R = T d(G/(R T)) / d(1/T) * (1/T) = H/R; divided by T once more it compares with "enthalpy".
            double inverse = 1 / kelvin;
            double step = 1e-5 * inverse;
            surfaces.SetTemperature(1 / (inverse + step));
            double up = surfaces.Evaluate(model, y, gradient, []);
            surfaces.SetTemperature(1 / (inverse - step));
            double down = surfaces.Evaluate(model, y, gradient, []);
            Assert.Equal(enthalpy, (up - down) / (2 * step) * inverse, 1e-6 * (1 + Math.Abs(enthalpy)));
        }
    }

    /// <summary>Gibbs-Duhem at constant temperature: the chemical potentials, got by differences of n G, change so that sum x dmu = 0.</summary>
    [Theory]
    [MemberData(nameof(Solutions))]
    public void ChemicalPotentials_OfSolution_ObeyGibbsDuhem(string phase)
    {
        foreach ((GibbsSurfaces surfaces, PhaseModel model, double[] y) in Cases(phase))
        {
            int n = model.Variables;
            double step = 2e-3 * y.Min();
            double[] moved = (double[])y.Clone();
            moved[0] += step;
            moved[n - 1] -= step;
            double[] back = (double[])y.Clone();
            back[0] -= step;
            back[n - 1] += step;
            double[] after = Potentials(surfaces, model, moved);
            double[] before = Potentials(surfaces, model, back);
            double sum = 0;
            double scale = 0;
            for (int v = 0; v < n; v++)
            {
                sum += y[v] * (after[v] - before[v]);
                scale += y[v] * Math.Abs(after[v] - before[v]);
            }

            Assert.True(Math.Abs(sum) < 2e-3 * scale, $"{phase}: sum x dmu = {sum}, parts {scale}");
        }
    }

    /// <summary>Chemical potentials / R T: d(n G)/dn_i by central differences.</summary>
    private static double[] Potentials(GibbsSurfaces surfaces, PhaseModel model, double[] x)
    {
        double[] potentials = new double[x.Length];
        double[] gradient = new double[x.Length];
        for (int i = 0; i < x.Length; i++)
        {
            double step = 1e-4 * x[i];
            potentials[i] = (Total(step) - Total(-step)) / (2 * step);

            double Total(double change)
            {
                double moles = 1 + change;
                double[] y = [.. x.Select((value, j) => (value + (j == i ? change : 0)) / moles)];
                return moles * surfaces.Evaluate(model, y, gradient, []);
            }
        }

        return potentials;
    }

    private static ReducedSystem System() => ReducedSystem.Of(PhasesData.Database, [.. ElementData.All]);

    private static IEnumerable<(GibbsSurfaces Surfaces, PhaseModel Model, double[] Y)> Cases(string phase)
    {
        ReducedSystem system = System();
        PhaseModel model = system.Models.Single(m => m.Name == phase);
        Random random = new(17);
        for (int i = 0; i < 8; i++)
        {
            GibbsSurfaces surfaces = new(system);
            surfaces.SetTemperature(320 + (random.NextDouble() * 300));
            double[] y = new double[model.Variables];
            for (int v = 0; v < y.Length; v++)
            {
                y[v] = 0.02 + random.NextDouble();
            }

            SiteFractions.Normalise(model, y);
            yield return (surfaces, model, y);
        }
    }
}
