using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Data.Pinouts;
using UnitsNet;

namespace ReworkThermal.Data.Tests.Pinouts;

public sealed class PinCsvTests
{
    private const string Header = "number,name,row,position,duty,destination,bond,current_a,pair,state,note\n";

    [Fact]
    public void What_is_written_is_read_back()
    {
        IReadOnlyList<PinRow> rows =
        [
            new(new Pin(new PadId("1"), "say \"5 V\", hot", 1, 1.5, new PinDuty.Wired("F1, left"), ElectricCurrent.FromAmperes(3), null), PadState.Loose, "line one\nline two"),
            new(new Pin(new PadId("2"), "D+", 1, 2.5, new PinDuty.Wired("U1.2"), null, "D"), PadState.Missing, null),
            new(new Pin(new PadId("3"), "GND", 2, 1, new PinDuty.Ground()), PadState.Wired, null),
            new(new Pin(new PadId("4"), "NC", 2, 2, new PinDuty.NoConnect()), null, " =1+1 "),
            new(new Pin(new PadId("S"), "SHELL", 3, 1, new PinDuty.Shield(ShieldBond.Separate)), PadState.Sound, null),
            new(new Pin(new PadId("T"), "SHELL", 3, 2, new PinDuty.Shield(ShieldBond.Grounded)), null, null),
        ];
        string text = PinCsv.Write(rows);
        IReadOnlyList<PinRow> back = PinCsv.Read(text, "pins.csv");
        Assert.Equal(rows, back);
        Assert.Equal(text, PinCsv.Write(back));
        Assert.Equal(rows, PinCsv.Read(text.Replace("\n", "\r\n", StringComparison.Ordinal).Replace("one\r\n", "one\n", StringComparison.Ordinal), "pins.csv"));
    }

    [Property]
    public Property Any_note_survives(NonNull<string> note) =>
        (note.Get.Length == 0 || PinCsv.Read(PinCsv.Write([new PinRow(new Pin(new PadId("1"), "x", 1, 1, new PinDuty.Ground()), null, note.Get)]), "x")[0].Note == note.Get).ToProperty();

    [Theory]
    [InlineData("+5V")]
    [InlineData("-12V")]
    [InlineData("=1+1")]
    [InlineData("@x")]
    [InlineData("'")]
    [InlineData("''")]
    [InlineData("'=x")]
    [InlineData("''+5V")]
    [InlineData("'quoted'")]
    public void Text_makes_the_round_trip_exactly_and_a_spreadsheet_runs_none_of_it(string text) => MakesTheTrip(text);

    [Property]
    public void Any_text_that_begins_with_what_is_guarded_makes_the_round_trip(NonNull<string> rest)
    {
        foreach (string first in new[] { "=", "+", "-", "@", "\t", "\r", "'", "''", "'='" })
        {
            string note = first + rest.Get;
            PinRow row = new(new Pin(new PadId("1"), "x", 1, 1, new PinDuty.Ground()), null, note);
            string text = PinCsv.Write([row]);
            Assert.Equal(note, PinCsv.Read(text, "x")[0].Note);
            MustNotRun(text);
        }
    }

    [Fact]
    public void Numbers_carry_no_guard() =>
        Assert.Contains("1,x,1,-2.5,ground,,,-0.5,", PinCsv.Write([new PinRow(new Pin(new PadId("1"), "x", 1, -2.5, new PinDuty.Ground(), ElectricCurrent.FromAmperes(-0.5)), null, null)]), StringComparison.Ordinal);

    private static void MakesTheTrip(string text)
    {
        PinRow row = new(new Pin(new PadId("1"), text, 1, 1, new PinDuty.Wired(text), null, text), PadState.Sound, text);
        string csv = PinCsv.Write([row]);
        Assert.Equal(row, Assert.Single(PinCsv.Read(csv, "x")));
        MustNotRun(csv);
    }

    private static void MustNotRun(string csv) => Assert.All(
        CsvCells.Split(csv).SelectMany(r => r.Cells),
        cell => Assert.False(cell.Length > 0 && "=+-@\t\r".Contains(cell[0], StringComparison.Ordinal), cell));

    [Fact]
    public void Columns_may_come_in_any_order_and_the_optional_ones_may_be_absent()
    {
        PinRow row = Assert.Single(PinCsv.Read("\uFEFFduty,position,row,name,number\nground, 2 ,1,GND,7\n\n", "pins.csv"));
        Assert.Equal(new PinRow(new Pin(new PadId("7"), "GND", 1, 2, new PinDuty.Ground()), null, null), row);
    }

    [Theory]
    [InlineData("", "pins.csv, line 1", "column names")]
    [InlineData(Header, "pins.csv, line 1", "at least one pin")]
    [InlineData("number,name,row,position,duty,colour\n1,a,1,1,ground,red\n", "pins.csv, line 1, colour", "no column known here")]
    [InlineData("number,name,row,position\n1,a,1,1\n", "pins.csv, line 1, duty", "is missing")]
    [InlineData("number,number,name,row,position,duty\n1,1,a,1,1,ground\n", "pins.csv, line 1, number", "stands twice")]
    [InlineData(Header + "1,a,1,1,ground\n", "pins.csv, line 2", "has 5 cells, the first row has 11")]
    [InlineData(Header + "1,a,1,1,ground,,,,,,\n2,b,x,2,ground,,,,,,\n", "pins.csv, line 3, row", "must be a number")]
    [InlineData(Header + "1,a,1.5,1,ground,,,,,,\n", "pins.csv, line 2, row", "whole number")]
    [InlineData(Header + "1,a,1,1,wired,,,,,,\n", "pins.csv, line 2, destination", "needs a destination")]
    [InlineData(Header + "1,a,1,1,shield,,,,,,\n", "pins.csv, line 2, bond", "grounded or separate")]
    [InlineData(Header + "1,a,1,1,earth,,,,,,\n", "pins.csv, line 2, duty", "got 'earth'")]
    [InlineData(Header + "1,a,1,1,ground,,,,,bent,\n", "pins.csv, line 2, state", "got 'bent'")]
    [InlineData(Header + "1,a,1,1,ground,,,,,,\n1,b,1,2,ground,,,,,,\n", "pins.csv", "pin 1: the number is used twice")]
    [InlineData(Header + "1,a,1,1,ground,,,,,,\"open\n", "pins.csv", "line 2: a cell in quotes does not end")]
    public void A_table_that_is_not_in_order_is_refused_with_the_place(string text, string place, string words)
    {
        DataFileException problem = Assert.Throws<DataFileException>(() => PinCsv.Read(text, "pins.csv"));
        Assert.StartsWith(place, problem.Message, StringComparison.Ordinal);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_problem_of_a_table_is_listed()
    {
        DataFileException problem = Assert.Throws<DataFileException>(() => PinCsv.Read(Header + "1,a,x,y,ground,,,,,,\n2,b,1,1,wired,,,,,bent,\n", "pins.csv"));
        Assert.Equal(4, problem.Problems.Count);
    }
}
