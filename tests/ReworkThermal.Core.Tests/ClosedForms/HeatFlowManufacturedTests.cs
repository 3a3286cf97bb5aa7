using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.HeatFlow.Boundaries;
using ReworkThermal.Core.HeatFlow.Posing;
using ReworkThermal.Core.HeatFlow.Solving;
using UnitsNet;
using Xunit.Abstractions;
using static ReworkThermal.Core.Verification.Textbook.Posing;

namespace ReworkThermal.Core.Tests.ClosedForms;

/// <summary>
/// Made-up exact solutions: a field is chosen, the source that makes it a solution is fed in, and the error must fall to a quarter
/// when mesh or step is halved (method: Roache, Journal of Fluids Engineering 124 (2002) 4-10). Derived here, three cases.
/// </summary>
public sealed class HeatFlowManufacturedTests(ITestOutputHelper output)
{
    private const double Heat = 2e6;
    private const double Period = 8;
    private const double Omega = 2 * Math.PI / Period;
    private const double Mean = 400;
    private const double Amplitude = 60;

    public static TheoryData<string> Names => ["insulated anisotropic cylinder", "slab with moving wall temperatures", "two rings with convection"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Error_falls_with_the_square_of_the_mesh(string name)
    {
        double[] errors = [.. new[] { 1, 2, 4 }.Select(fine => Error(Make(name), fine, 1.0 / 256))];

        Report(name + ", space", errors);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Error_falls_with_the_square_of_the_step(string name)
    {
        // Against a run of very short steps on the same mesh, so that only the error in time is left.
        Case made = Make(name);
        double[] still = Field(made, 1, 1.0 / 1024);
        double[] errors = [.. new[] { 0.5, 0.25, 0.125 }.Select(step => Field(made, 1, step).Zip(still, (a, b) => Math.Abs(a - b)).Max())];

        Report(name + ", time", errors);
    }

    private static Case Make(string name) => name switch
    {
        "insulated anisotropic cylinder" => Insulated(),
        "slab with moving wall temperatures" => MovingWalls(),
        _ => TwoRings(),
    };

    // T = mean + A sin(wt) (2 + cos(pi z/L)) (1 + r²/R² - r^4/(2 R^4)): no flux through any face; conductivities 1 and 3.
    private static Case Insulated()
    {
        const double size = 0.01;
        const double kr = 3;
        const double kz = 1;
        static double Shape(double r) => ((r * r) - (r * r * r * r / 2)) + 1;
        double Exact(double r, double z, double t) => Mean + (Amplitude * Math.Sin(Omega * t) * (2 + Math.Cos(Math.PI * z / size)) * Shape(r / size));
        double Source(double r, double z, double t)
        {
            double x = r / size;
            double wave = Math.Cos(Math.PI * z / size);
            double radial = (4 - (8 * x * x)) / (size * size) * (2 + wave);
            double axial = -(Math.PI * Math.PI) / (size * size) * wave * Shape(x);
            return Amplitude * ((Heat * Omega * Math.Cos(Omega * t) * (2 + wave) * Shape(x)) - (Math.Sin(Omega * t) * ((kr * radial) + (kz * axial))));
        }

        PosedProblem problem = Ring(0, size, size, Solid(kr, kz, Heat), Mean - 273.15, [Cells(size, 8)], [Cells(size, 8)], 3, []);
        return new Case(problem, Exact, Source);
    }

    // T = mean + A sin(wt) (1 + (z/L)^4), the wall temperatures imposed.
    private static Case MovingWalls()
    {
        const double size = 0.004;
        const double k = 1;
        double Exact(double r, double z, double t) => Mean + (Amplitude * Math.Sin(Omega * t) * (1 + Math.Pow(z / size, 4)));
        double Source(double r, double z, double t) => Amplitude * (
            (Heat * Omega * Math.Cos(Omega * t) * (1 + Math.Pow(z / size, 4)))
            - (k * Math.Sin(Omega * t) * 12 * z * z / Math.Pow(size, 4)));
        FaceCondition Wall(double factor) => new FaceCondition.Held(new TimeCourse.Sine(Temperature.FromKelvins(Mean), TemperatureDelta.FromKelvins(Amplitude * factor), Seconds(Period)));
        PosedProblem problem = Slab([(size, Solid(k, Heat), Mean - 273.15)], [Cells(size, 8)], 3, [], On(ThermalFace.Bottom, Wall(1)), On(ThermalFace.Top, Wall(2)));
        return new Case(problem, Exact, Source);
    }

    // T = mean + A sin(wt) g(r), g' k continuous over the joint of two rings, convection at the rim.
    private static Case TwoRings()
    {
        const double size = 0.006;
        const double joint = 0.003;
        const double inner = 4;
        const double outer = 0.5;
        const double film = 200;
        static double G(double r)
        {
            double x = r / size;
            double at = joint / size;
            return r <= joint ? 1 + (0.5 * x * x * x) : 1 + (0.5 * at * at * at) + (0.5 * inner / outer * ((x * x * x) - (at * at * at)));
        }

        double Exact(double r, double z, double t) => Mean + (Amplitude * Math.Sin(Omega * t) * G(r));
        double Source(double r, double z, double t) => Amplitude * ((Heat * Omega * Math.Cos(Omega * t) * G(r)) - (Math.Sin(Omega * t) * inner * 4.5 * r / Math.Pow(size, 3)));
        double gas = G(size) + (inner * 1.5 / size / film);
        FaceCondition rim = new FaceCondition.Convection(Coefficient(film), new TimeCourse.Sine(Temperature.FromKelvins(Mean), TemperatureDelta.FromKelvins(Amplitude * gas), Seconds(Period)));
        PosedProblem problem = Ring(0, size, 1, Solid(outer, Heat), Mean - 273.15, [Cells(joint, 8), Cells(size, 8)], [Cells(1, 1)], 3, [], On(ThermalFace.Rim, rim));
        return new Case(
            problem with { Blocks = [.. problem.Blocks, new PosedBlock(Metre(0), Metre(joint), Metre(0), Metre(1), Solid(inner, Heat), Celsius(Mean - 273.15))] },
            Exact,
            Source);
    }

    private static double Error(Case made, int refinement, double step)
    {
        (ThermalSystem system, double[] kelvin) = March(made, refinement, step);
        double end = made.Problem.Stages[0].Span.Seconds;
        double worst = 0;
        for (int i = 0; i < system.Grid.Radial.Count; i++)
        {
            for (int j = 0; j < system.Grid.Axial.Count; j++)
            {
                worst = Math.Max(worst, Math.Abs(kelvin[system.Grid.Index(i, j)] - made.Exact(system.Grid.Radial.Centres[i], system.Grid.Axial.Centres[j], end)));
            }
        }

        return worst;
    }

    private static double[] Field(Case made, int refinement, double step) => March(made, refinement, step).Kelvin;

    private static (ThermalSystem System, double[] Kelvin) March(Case made, int refinement, double step)
    {
        SolverSettings settings = new()
        {
            Refinement = refinement,
            StepTolerance = TemperatureDelta.FromKelvins(1e3),
            FirstStep = Seconds(step),
            LongestStep = Seconds(step),
        };
        ThermalSystem system = PosedCompiler.Compile(made.Problem, settings);
        system.Source = made.Source;
        PosedCompiler.Apply(system, made.Problem.Stages[0].Patches);
        TransientEngine engine = new(system, settings.ControlFor(3) with { ToleranceK = 1e3, NewtonToleranceK = 1e-9 }, null);
        engine.Start(_ => Mean);
        Assert.True(engine.AdvanceTo(made.Problem.Stages[0].Span.Seconds, CancellationToken.None));
        Assert.InRange(engine.Ledger.BalanceError, 0, 1e-3);
        return (system, system.CellTemperaturesK.ToArray());
    }

    private void Report(string what, double[] errors)
    {
        double first = Math.Log2(errors[0] / errors[1]);
        double second = Math.Log2(errors[1] / errors[2]);
        output.WriteLine($"{what}: errors {errors[0]:e3}, {errors[1]:e3}, {errors[2]:e3} K; observed order {first:0.00}, {second:0.00}");
        Assert.InRange(second, 1.8, 2.5);
    }

    private sealed record Case(PosedProblem Problem, Func<double, double, double, double> Exact, Func<double, double, double, double> Source);
}
