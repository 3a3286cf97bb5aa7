using System.Diagnostics;
using System.Globalization;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Tests.Store;
using Xunit.Abstractions;

namespace ReworkThermal.Data.Tests.Fuzzing;

/// <summary>
/// Spoiled files: whatever stands in them, a reader accepts them or refuses them with sentences that a technician can use. A fixed number
/// of spoiled texts here; with REWORK_THERMAL_FUZZ_MINUTES=10 each reader is spoiled anew for its share of ten minutes.
/// </summary>
public sealed class FuzzTests(ITestOutputHelper output)
{
    private const int Usual = 150;

    /// <summary>Longest sentence that is still one.</summary>
    private const int MostCharacters = 700;

    public static TheoryData<string> Readers => [.. FuzzedReader.All.Select(r => r.Name)];

    [Theory]
    [MemberData(nameof(Readers))]
    public void A_spoiled_text_is_accepted_or_refused_in_plain_words(string name)
    {
        FuzzedReader reader = FuzzedReader.All.Single(r => r.Name == name);
        TimeSpan? span = Minutes() / FuzzedReader.All.Count;
        Stopwatch watch = Stopwatch.StartNew();
        int accepted = 0;
        int refused = 0;
        for (int seed = span is null ? 0 : Environment.TickCount & 0xFFFFFF; span is null ? accepted + refused < Usual : watch.Elapsed < span; seed++)
        {
            (string file, string text) = reader.Examples[seed % reader.Examples.Count];
            using TemporaryFolder folder = new();
            try
            {
                reader.Read(file, Mangler.Mangle(text, seed), folder);
                accepted++;
            }
            catch (DataFileException complaint)
            {
                Assert.NotEmpty(complaint.Problems);
                Assert.All(complaint.Problems, p => IsSentence(p.ToString(), name, seed));
                refused++;
            }
            catch (JobStoreException complaint) when (complaint.Trouble == StoreTrouble.BadImport)
            {
                IsSentence(complaint.Message, name, seed);
                refused++;
            }
            catch (Exception fault) when (fault is not Xunit.Sdk.XunitException)
            {
                Assert.Fail(FormattableString.Invariant($"{name}, {file}, seed {seed}: {fault}"));
            }
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name}: {accepted + refused} spoiled texts, {accepted} accepted, {refused} refused"));
        Assert.True(accepted + refused > 0);
    }

    private static void IsSentence(string text, string name, int seed) => Assert.True(
        text.Length is > 10 and < MostCharacters && !text.Contains("Exception", StringComparison.Ordinal) && !text.Contains("System.", StringComparison.Ordinal),
        FormattableString.Invariant($"{name}, seed {seed}: not a sentence for a technician: {text}"));

    private static TimeSpan? Minutes() =>
        double.TryParse(Environment.GetEnvironmentVariable("REWORK_THERMAL_FUZZ_MINUTES"), NumberStyles.Float, CultureInfo.InvariantCulture, out double minutes)
            ? TimeSpan.FromMinutes(minutes)
            : null;
}
