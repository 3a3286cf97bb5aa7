using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Reports.Records;

namespace ReworkThermal.App.Rendering.Record;

/// <summary>What the figures rest on: assumptions, timed measurements, program, data and sources.</summary>
internal static class BasisSection
{
    /// <summary>Lays out the section.</summary>
    internal static RecordSection Of(RecordReport record) => new(RecordWords.BasisHeading,
    [
        new RecordBlock.Items(
        [
            .. record.Notes,
            .. record.Pads.SelectMany(p => p.Budget.Assumptions).Select(Sentence.Of).Where(IsGeneral).Distinct(),
            .. record.Final?.Curve.Notes ?? [],
            record.Job.Measurements.Count > 0 ? RecordWords.Measured(record.Job.Measurements.Count) : RecordWords.NothingMeasured,
            .. record.Job.Measurements.Select(m => Sentence.Of(EventWords.Of(new JobEvent.MeasurementTaken(m.What)))),
            RecordWords.Program(record.ProgramVersion, record.DataFingerprint),
        ]),
        .. record.Sources.Count > 0 ? (RecordBlock[])[new RecordBlock.SmallPrint(RecordWords.Sources(record.Sources))] : [],
    ]);

    // What differs from pad to pad stands in the budget of the pad, not in the record.
    private static bool IsGeneral(string sentence) => !sentence.Contains("instead of", StringComparison.Ordinal);
}
