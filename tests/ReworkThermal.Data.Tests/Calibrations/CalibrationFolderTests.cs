using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Calibrations;
using UnitsNet;

namespace ReworkThermal.Data.Tests.Calibrations;

public sealed class CalibrationFolderTests : IDisposable
{
    private readonly string _path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());

    [Fact]
    public void What_is_kept_is_read_back()
    {
        CalibrationFolder folder = new(_path);
        BoardRecord record = Record();
        folder.Keep(record);
        BoardRecord back = folder.Find("six-layer-controller")!;
        Assert.Equal(record.Touches.Select(t => t.Seen), back.Touches.Select(t => t.Seen));
        Assert.Equal(record.Touches.Select(t => (t.Number, t.Joint, t.Solder, t.Added, t.Iron, t.Preheater, t.Side, t.Contact)), back.Touches.Select(t => (t.Number, t.Joint, t.Solder, t.Added, t.Iron, t.Preheater, t.Side, t.Contact)));
        Assert.Equal(record.Touches.Select(t => t.Set.DegreesCelsius), back.Touches.Select(t => t.Set.DegreesCelsius));
        Assert.Equal(3.25, back.Touches[0].AddedMass.Milligrams, 9);
        Assert.Equal(record.Learned!.Deviations, back.Learned!.Deviations);
        Assert.Equal(record.Learned.Covariance.SelectMany(r => r), back.Learned.Covariance.SelectMany(r => r));
        Assert.Equal(2, back.Learned.Observations);
    }

    [Fact]
    public void A_record_replaces_the_one_before_and_leaves_nothing_beside_it()
    {
        CalibrationFolder folder = new(_path);
        folder.Keep(Record());
        folder.Keep(Record() with { Touches = [], Learned = null });
        Assert.Empty(folder.Find("six-layer-controller")!.Touches);
        Assert.Single(Directory.GetFiles(_path));
    }

    [Fact]
    public void What_is_forgotten_is_gone()
    {
        CalibrationFolder folder = new(_path);
        folder.Keep(Record());
        Assert.True(folder.Forget("six-layer-controller"));
        Assert.False(folder.Forget("six-layer-controller"));
        Assert.Null(folder.Find("six-layer-controller"));
    }

    [Theory]
    [InlineData("../elsewhere")]
    [InlineData("a/b")]
    [InlineData("")]
    public void A_board_cannot_name_a_path(string board)
    {
        Assert.Throws<ArgumentException>(() => new CalibrationFolder(_path).Find(board));
    }

    [Fact]
    public void A_damaged_file_is_refused_with_file_and_field()
    {
        CalibrationFolder folder = new(_path);
        folder.Keep(Record());
        string file = Directory.GetFiles(_path).Single();
        File.WriteAllText(file, File.ReadAllText(file).Replace("deviations = [", "deviations = [1.0, ", StringComparison.Ordinal));
        DataFileException problem = Assert.Throws<DataFileException>(() => folder.Find("six-layer-controller"));
        Assert.Contains("deviations", problem.Problems.Single().ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Text_with_quotes_and_control_characters_survives()
    {
        CalibrationFolder folder = new(_path);
        BoardRecord record = Record();
        folder.Keep(record with { Touches = [record.Touches[0] with { Solder = "a \"b\" \\ \u0007 µ" }] });
        Assert.Equal("a \"b\" \\ \u0007 µ", folder.Find("six-layer-controller")!.Touches[0].Solder);
    }

    public void Dispose()
    {
        if (Directory.Exists(_path))
        {
            Directory.Delete(_path, recursive: true);
        }
    }

    internal static BoardRecord Record()
    {
        ObservedTouch touch = new()
        {
            Number = 1,
            Joint = "jack-anchor-six-layer",
            Side = BoardSide.Bottom,
            Ambient = Temperature.FromDegreesCelsius(23.5),
            Contact = ContactState.Tinned,
            Solder = "Sn96.5Ag3Cu0.5",
            Added = "Bi58Sn42",
            AddedMass = Mass.FromMilligrams(3.25),
            Iron = "medium",
            Set = Temperature.FromDegreesCelsius(340),
            Preheater = "hot-plate",
            Board = Temperature.FromDegreesCelsius(120),
            Seen = new Sighting.Flowed(Duration.FromSeconds(4.2)),
        };
        return new BoardRecord(
            "six-layer-controller",
            [
                touch,
                touch with { Number = 2, Added = null, AddedMass = Mass.Zero, Preheater = null, Board = null, Seen = new Sighting.NotFlowed(Duration.FromSeconds(8)) },
                touch with { Number = 4, Origin = "job abc, entry 12", Seen = new Sighting.FlowedWithin(Duration.FromSeconds(5.5)) },
                touch with { Number = 3, Side = BoardSide.Top, Seen = new Sighting.Reading("plane_5mm", Duration.FromSeconds(3), Temperature.FromDegreesCelsius(118)) },
            ],
            new BenchCalibration("six-layer-controller", [-0.5, 0.25, 1.0 / 3], [[0.5, 0.1, 0], [0.1, 0.75, 0.2], [0, 0.2, 1e-3]], 2));
    }
}
