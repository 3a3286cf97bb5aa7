using System.Globalization;
using ReworkThermal.Core.Verification;
using ReworkThermal.Core.Verification.Textbook;
using ReworkThermal.Data;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Reference;
using Xunit.Abstractions;

namespace ReworkThermal.Core.Tests.Published;

/// <summary>
/// Every published figure of tests/reference and of the thermodynamic data files, computed anew: the same run as the program's own
/// verification. Each row names its source and its room; the worst is printed first.
/// </summary>
public sealed class VerificationTests(ITestOutputHelper output)
{
    private static readonly Lazy<IReadOnlyList<ComparedValue>> _all = new(Run);

    // The least numbers guard against a table that is not read.
    [Theory]
    [InlineData(VerificationArea.Melting, 150)]
    [InlineData(VerificationArea.HeatFlow, 120)]
    [InlineData(VerificationArea.ThreeDimensional, 24)]
    [InlineData(VerificationArea.Practice, 14)]
    [InlineData(VerificationArea.Damage, 180)]
    [InlineData(VerificationArea.Wires, 70)]
    public void Every_binding_figure_is_met(VerificationArea area, int least)
    {
        ComparedValue[] rows = [.. _all.Value.Where(r => r.Published.Area == area).OrderByDescending(r => r.Binds).ThenByDescending(r => r.RoomUsed)];
        foreach (ComparedValue row in rows)
        {
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{row.Agreement,-11} {row.Published.Subject,-70} published {row.Published.Value,11:G7} computed {row.Computed,11:G7} {row.Published.Unit,-6} off {row.Deviation,9:G3} room -{row.Published.Below:G3} +{row.Published.Above:G3}  {row.Published.Provenance.Mark}: {row.Published.Provenance.Source} {row.Published.Remark}"));
        }

        int binding = rows.Count(r => r.Binds);
        output.WriteLine($"{binding} binding, {rows.Length - binding} for information");
        Assert.True(binding >= least, $"only {binding} binding figures");
        Assert.Empty(rows.Where(r => r.Agreement == Agreement.Outside).Select(r => FormattableString.Invariant($"{r.Published.Table} line {r.Published.Line}, {r.Published.Subject}: {r.Computed} against {r.Published.Value}")));
    }

    [Fact]
    public void Every_textbook_case_is_posed_or_listed_as_not_posed()
    {
        IEnumerable<string> cases = ReferenceLibrary.Rows("thermal.csv").Select(r => r["case"]).Distinct();

        Assert.Empty(cases.Except(TextbookCases.Posed.Keys).Except(TextbookCases.NotPosed));
        output.WriteLine("not posed (planar, two-dimensional): " + string.Join(", ", TextbookCases.NotPosed));
    }

    /// <summary>A figure of demonstration data must never pose as a published one; what practice expects stands apart, in an area of its own.</summary>
    [Fact]
    public void Every_figure_names_a_source() =>
        Assert.Empty(_all.Value
            .Where(r => r.Published.Area != VerificationArea.Practice)
            .Where(r => r.Published.Provenance.Source.Length < 10 || r.Published.Provenance.Source.EndsWith("no source", StringComparison.Ordinal))
            .Select(r => $"{r.Published.Table}: {r.Published.Subject}: {r.Published.Provenance.Source}"));

    /// <summary>The check itself must be able to fail: a figure moved by twice its room is outside.</summary>
    [Fact]
    public void A_figure_beyond_its_room_is_outside()
    {
        ComparedValue met = _all.Value.First(r => r.Agreement == Agreement.Within && r.Published.Above > 0);
        Assert.Equal(Agreement.Outside, (met with { Computed = met.Published.Value + (2 * met.Published.Above) }).Agreement);
        Assert.Equal(Agreement.Outside, (met with { Computed = null }).Agreement);
    }

    private static IReadOnlyList<ComparedValue> Run()
    {
        AlloyShelf shelf = AlloyShelf.Load(DataRoot.BesideProgram);
        ReferenceTables tables = ReferenceLibrary.Load();
        return VerificationRun.Run(
            tables,
            PhasesData.Database,
            shelf.Properties,
            DamageBench.Limits,
            PracticeCases.Load(tables.Practice, PhasesData.Engine),
            shelf.Sources.Citations,
            CancellationToken.None);
    }
}
