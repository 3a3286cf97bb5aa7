using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;
using ReworkThermal.Data.Pinouts;
using ReworkThermal.Data.Wires;
using UnitsNet;

namespace ReworkThermal.Data.Tests.Pinouts;

/// <summary>The pin-outs, wires and limits that come with the program.</summary>
public sealed class BenchProfileTests
{
    private static readonly string _profiles = DataRoot.BesideProgram.Profiles;

    public static TheoryData<string> PinoutNames => [.. Files("pinouts")];

    public static TheoryData<string> WireNames => [.. Files("wires")];

    [Theory]
    [MemberData(nameof(PinoutNames))]
    public void Every_pinout_can_be_read_and_opens_a_job(string name)
    {
        Pinout pinout = PinoutFile.Load(Path.Combine(_profiles, "pinouts", name));
        IReadOnlyList<JobEvent> events = PinRow.Events([.. pinout.Register.Pins.Select(p => new PinRow(p, null, null))]);
        IReadOnlyList<JobEntry> entries = [.. events.Prepend(new JobEvent.JobOpened(new JobBrief("x"))).Select((e, i) => new JobEntry(i + 1, DateTimeOffset.UnixEpoch, e))];
        _ = Assert.IsType<EventVerdict.Accepted>(JobRules.JudgeAll(entries));
        Assert.NotEmpty(JobState.Replay(new JobId("aaaaaa"), entries).Checks.Lines);
    }

    [Theory]
    [MemberData(nameof(WireNames))]
    public void Every_wire_can_be_read_and_names_known_sources(string name)
    {
        WireKind kind = WireFiles.LoadKind(Path.Combine(_profiles, "wires", name));
        Bibliography sources = Bibliography.Load(Path.Combine(_profiles, "sources.toml"));
        Assert.Equal(kind.Insulated, kind.Rating is not null);
        foreach (string? source in (string?[])[kind.Rating?.Provenance.Source, kind.Wall.Provenance.Source, kind.RelativePermittivity.Provenance.Source, kind.Emissivity.Provenance.Source, kind.StripsAt?.Provenance.Source])
        {
            Assert.True(source is null || sources.Cite(source) is not null, source);
        }
    }

    [Fact]
    public void A_short_supply_wire_of_the_demo_is_judged_with_the_shipped_limits()
    {
        WireLimits limits = WireFiles.LoadLimits(Path.Combine(_profiles, "limits", "jumper-wires.toml"));
        Bibliography sources = Bibliography.Load(Path.Combine(_profiles, "sources.toml"));
        Assert.NotNull(sources.Cite(limits.CurrentDensity.Provenance.Source));
        WireKind kind = WireFiles.LoadKind(Path.Combine(_profiles, "wires", "wrapping-pvdf.toml"));
        WireReport Judge(int gauge) => WireJudge.Judge(
            new WireTask(new WireGauge(gauge), Length.FromMillimeters(25), ElectricCurrent.FromAmperes(3), ElectricPotential.FromVolts(5), Temperature.FromDegreesCelsius(40), true), kind, limits);
        _ = Assert.IsType<WireFitness.Unfit>(Judge(30).Fitness);
        _ = Assert.IsType<WireFitness.Close>(Judge(22).Fitness);
        _ = Assert.IsType<WireFitness.Fit>(Judge(18).Fitness);
    }

    [Fact]
    public void Readings_are_suggested_by_the_shipped_limits()
    {
        CheckLimits limits = CheckLimitsFile.Load(Path.Combine(_profiles, "limits", "electrical-checks.toml"));
        ExpectedReading conducts = new ExpectedReading.Conducts("U1.1", ReferencePoint.Destination);
        ExpectedReading open = new ExpectedReading.Open();
        MeterReading Shown(double ohms) => new MeterReading.Shown(ElectricResistance.FromOhms(ohms));
        Assert.Equal(CheckResult.Pass, limits.Suggest(conducts, Shown(0.3)));
        Assert.Equal(CheckResult.Fail, limits.Suggest(conducts, Shown(30)));
        Assert.Equal(CheckResult.Fail, limits.Suggest(conducts, new MeterReading.OverRange()));
        Assert.Equal(CheckResult.Fail, limits.Suggest(open, Shown(0.3)));
        Assert.Equal(CheckResult.Pass, limits.Suggest(open, Shown(30_000)));
        Assert.Equal(CheckResult.Pass, limits.Suggest(open, new MeterReading.OverRange()));
    }

    [Theory]
    [InlineData("duty = \"ground\"", "duty = \"earth\"", "duty: must be one of wired, ground, shield, no-connect")]
    [InlineData("number = \"2\"", "number = \"1\"", "the number is used twice")]
    [InlineData("row = 1", "row = 0", "row: must lie between 1 and 1000")]
    [InlineData("destination = \"U3.12\"", "", "destination: is missing")]
    [InlineData("pair = \"P0\"", "twin = \"P0\"", "twin: is not a field of this table")]
    public void A_pinout_that_is_not_in_order_is_refused_with_the_place(string old, string replacement, string words)
    {
        string text = File.ReadAllText(Path.Combine(_profiles, "pinouts", "panel-jack-16.toml"));
        Assert.Contains(old, text, StringComparison.Ordinal);
        string path = Path.GetTempFileName();
        try
        {
            File.WriteAllText(path, text.Replace(old, replacement, StringComparison.Ordinal));
            DataFileException problem = Assert.Throws<DataFileException>(() => PinoutFile.Load(path));
            Assert.Contains(words, problem.Message, StringComparison.Ordinal);
            Assert.Contains("line ", problem.Message, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static IEnumerable<string> Files(string folder) => Directory.GetFiles(Path.Combine(_profiles, folder), "*.toml").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal);
}
