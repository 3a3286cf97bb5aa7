using ReworkThermal.Core.Boards;
using ReworkThermal.Core.HeatFlow.Readings;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Core.Planning.Uncertainty;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Toml;
using UnitsNet;

namespace ReworkThermal.Data.Calibrations;

/// <summary>Reads a record back.</summary>
internal static class BoardRecordReader
{
    /// <summary>Reads a file.</summary>
    internal static BoardRecord Read(string path)
    {
        FieldReader file = FieldReader.Open(path);
        string board = file.Text("board");
        List<ObservedTouch> touches = [.. file.Tables("touch").Select(Touch)];
        BenchCalibration? learned = file.TableOrNull("learned") is { } table ? Learned(table, board) : null;
        file.Finish();
        return new BoardRecord(board, touches, learned);
    }

    private static ObservedTouch Touch(FieldReader table) => new()
    {
        Number = table.Whole("number", 1, int.MaxValue),
        Joint = table.Text("joint"),
        Side = table.OneOf<BoardSide>("side"),
        Ambient = table.Quantity("ambient", UnitTable.Temperatures),
        Contact = table.OneOf<ContactState>("contact"),
        Solder = table.Text("solder"),
        Added = table.TextOrNull("added"),
        AddedMass = table.Has("added") ? table.Quantity("added_mass", UnitTable.Masses, Mass.Zero) : Mass.Zero,
        Iron = table.Text("iron"),
        Set = table.Quantity("set", UnitTable.Temperatures),
        Preheater = table.TextOrNull("preheater"),
        Board = table.Has("preheater") ? table.Quantity("board_temperature", UnitTable.Temperatures) : null,
        Origin = table.TextOrNull("origin"),
        Seen = Seen(table),
    };

    private static Sighting Seen(FieldReader table)
    {
        Duration least = Duration.FromMilliseconds(1);
        if (table.Has("flowed_after"))
        {
            return new Sighting.Flowed(table.Quantity("flowed_after", UnitTable.Durations, least));
        }

        if (table.Has("flowed_within"))
        {
            return new Sighting.FlowedWithin(table.Quantity("flowed_within", UnitTable.Durations, least));
        }

        return table.Has("not_flowed_within")
            ? new Sighting.NotFlowed(table.Quantity("not_flowed_within", UnitTable.Durations, least))
            : new Sighting.Reading(
                table.OneOf("probe", Probes),
                table.Quantity("after", UnitTable.Durations, least),
                table.Quantity("reading", UnitTable.Temperatures));
    }

    /// <summary>Places where a thermocouple can be: probes of the heat model that a hand can reach.</summary>
    internal static IReadOnlyDictionary<string, string> Probes { get; } = new[]
    {
        ProbeNames.NearPad, ProbeNames.FarPad, ProbeNames.Board, ProbeNames.Plane(5), ProbeNames.Plane(10), ProbeNames.Plane(20), ProbeNames.Connector,
    }.ToDictionary(n => n, n => n, StringComparer.Ordinal);

    private static BenchCalibration Learned(FieldReader table, string board)
    {
        int count = UncertainInputs.Learnable.Count;
        List<IReadOnlyList<double>> rows = [];
        for (int i = 1; i <= count; i++)
        {
            rows.Add(Numbers(table, FormattableString.Invariant($"covariance_{i}"), count));
        }

        return new BenchCalibration(board, Numbers(table, "deviations", count), rows, table.Whole("observations", 1, int.MaxValue));
    }

    private static IReadOnlyList<double> Numbers(FieldReader table, string name, int count)
    {
        IReadOnlyList<double> numbers = table.Numbers(name);
        return numbers.Count == count ? numbers : throw table.Wrong(name, FormattableString.Invariant($"must list {count} numbers"));
    }
}
