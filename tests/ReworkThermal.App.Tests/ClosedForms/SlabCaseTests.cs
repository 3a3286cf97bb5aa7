using System.Text.Json;
using ReworkThermal.Data;

namespace ReworkThermal.App.Tests.ClosedForms;

/// <summary>A textbook problem that anyone can pose in a case file, from the file to the printed answer.</summary>
public sealed class SlabCaseTests
{
    private const double StartCelsius = 23;

    private const double FluidCelsius = 250;

    // 0.1 % of the span of 227 K: the mesh of the case (60 cells) and the default error control leave less than half of that.
    private const double ToleranceK = 0.25;

    [Fact]
    public void A_dipped_slab_follows_the_series_solution()
    {
        // H.S. Carslaw, J.C. Jaeger, Conduction of Heat in Solids, 2nd ed. (1959), section 3.11: slab insulated at x = 0, convection at
        // x = L, Biot number 1; Fo = a t / L^2 with a = 1e-6 m2/s and L = 2 mm is t / 4 s.
        JsonElement json = Bench.Run("heat", Path.Combine(DataRoot.BesideProgram.Profiles, "cases", "slab-dipped.toml"), "--json").Json();
        double[] seconds = [.. json.GetProperty("time_s").EnumerateArray().Select(v => v.GetDouble())];
        double[] insulated = [.. json.GetProperty("probes").GetProperty("insulated_face").EnumerateArray().Select(v => v.GetDouble())];
        double[] wetted = [.. json.GetProperty("probes").GetProperty("wetted_face").EnumerateArray().Select(v => v.GetDouble())];
        Assert.Equal(4, seconds[^1], 6);
        for (int i = 0; i < seconds.Length; i++)
        {
            if (seconds[i] >= 0.2)
            {
                Assert.Equal(Exact(0, seconds[i] / 4), insulated[i], ToleranceK);
                Assert.Equal(Exact(1, seconds[i] / 4), wetted[i], ToleranceK);
            }
        }

        Assert.True(Math.Abs(json.GetProperty("energy_balance_error").GetDouble()) < 0.001);
        Assert.Equal(JsonValueKind.Null, json.GetProperty("time_to_flow_s").ValueKind);
    }

    private static double Exact(double place, double fourier)
    {
        double left = 0;
        for (int n = 0; n < 40; n++)
        {
            double root = Root(n);
            left += 4 * Math.Sin(root) / ((2 * root) + Math.Sin(2 * root)) * Math.Exp(-root * root * fourier) * Math.Cos(root * place);
        }

        return FluidCelsius + ((StartCelsius - FluidCelsius) * left);
    }

    // Root n of z tan z = 1, between n pi and n pi + pi / 2, by bisection.
    private static double Root(int n)
    {
        double low = n * Math.PI;
        double high = low + (Math.PI / 2) - 1e-12;
        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = middle * Math.Tan(middle) < 1 ? (middle, high) : (low, middle);
        }

        return low;
    }
}
