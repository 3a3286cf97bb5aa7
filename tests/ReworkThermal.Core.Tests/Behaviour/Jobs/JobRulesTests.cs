using FsCheck.Xunit;
using ReworkThermal.Core.HeatFlow;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Jobs.Checking;
using ReworkThermal.Core.Jobs.Pins;
using ReworkThermal.Core.Jobs.Wiring;
using UnitsNet;

namespace ReworkThermal.Core.Tests.Behaviour.Jobs;

public sealed class JobRulesTests
{
    public static TheoryData<JobEvent, string> Refusals { get; } = new()
    {
        { new JobEvent.JobOpened(new JobBrief("again")), "open already" },
        { new JobEvent.BriefRevised(new JobBrief("  ")), "label must not be empty" },
        { new JobEvent.BriefRevised(new JobBrief(new string('x', 201))), "at most 200" },
        { new JobEvent.NoteTaken("half \ud83d", null), "lone surrogate" },
        { new JobEvent.PinsRegistered([]), "at least one pin" },
        { new JobEvent.PinsRegistered([new Pin(new PadId("1"), "x", 9, 1, new PinDuty.Ground())]), "in this job already" },
        { new JobEvent.PinsRegistered([new Pin(new PadId("9"), "x", 1, 1, new PinDuty.Ground())]), "stands where pin 1 stands" },
        { new JobEvent.PadStateSeen(new PadId("99"), PadState.Sound, null), "no pad 99" },
        { JobHistory.Touch(5, []), "at least one pad" },
        { JobHistory.Touch(5, [new PadId("2"), new PadId("2")]), "named twice" },
        { JobHistory.Touch(-1, [new PadId("2")]), "between 0 and 86400 s" },
        { JobHistory.Touch(5, [new PadId("99")]), "no pad 99" },
        { JobHistory.Touch(5, [new PadId("2")], ends: 2), "no touch that is still open" },
        { new JobEvent.ExposureLogged(JobHistory.Touch(5, [new PadId("2")]).Exposure with { Tools = [] }, null), "at least one tool" },
        {
            new JobEvent.ExposureLogged(
                JobHistory.Touch(5, []).Exposure with { Pads = [new HeatedPad(new PadId("2"), true, true, InterfaceSeries.Measured(new TemperatureHistory([-1, 2], [20, 30])))] },
                null),
            "beginning of the touch"
        },
        { new JobEvent.TouchDropped(2, "x"), "no touch that is still open" },
        { new JobEvent.CheckDone(new ElectricalCheck.Isolation(new PadId("2"), new PadId("5")), CheckResult.Pass, null, null), "not on the job's list" },
        { new JobEvent.WireRun(new JumperWire(new PadId("2"), new PadId("2"), new WireGauge(30), Length.FromMillimeters(9), null), null), "two different ends" },
        { new JobEvent.WireRun(new JumperWire(new PadId("2"), new PadId("3"), new WireGauge(30), Length.Zero, null), null), "above 0" },
        { new JobEvent.EntryVoided(1, "x"), "cannot be voided" },
        { new JobEvent.EntryVoided(77, "x"), "no entry 77" },
        { new JobEvent.JobReopened("x"), "the job is open" },
    };

    [Theory]
    [MemberData(nameof(Refusals), DisableDiscoveryEnumeration = true)]
    public void What_does_not_fit_is_refused_with_a_reason(JobEvent what, string words) =>
        Assert.Contains(words, JobHistory.WithSixPins().Refuse(what), StringComparison.Ordinal);

    [Fact]
    public void Nothing_comes_before_the_opening() =>
        Assert.Equal("a job must be opened first", Assert.IsType<EventVerdict.Refused>(JobRules.Judge(null, new JobEvent.CautionsShown())).Reason);

    [Fact]
    public void An_entry_is_voided_once_and_needs_a_reason()
    {
        JobHistory history = JobHistory.WithSixPins();
        int touch = history.Add(JobHistory.Touch(5, [JobHistory.Pad(2)]));
        Assert.Contains("reason must not be empty", history.Refuse(new JobEvent.EntryVoided(touch, " ")), StringComparison.Ordinal);
        int voiding = history.Add(new JobEvent.EntryVoided(touch, "slip"));
        Assert.Contains("voided already", history.Refuse(new JobEvent.EntryVoided(touch, "slip")), StringComparison.Ordinal);
        Assert.Contains("cannot be voided", history.Refuse(new JobEvent.EntryVoided(voiding, "slip")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\u001b[31mred", "<U+001B>[31mred")]
    [InlineData("a\u009b31mb", "a<U+009B>31mb")]
    [InlineData("x\ny\t", "x<U+000A>y<U+0009>")]
    [InlineData("\u202eabc", "<U+202E>abc")]
    [InlineData("µ 日本 é", "µ 日本 é")]
    public void Text_for_a_terminal_shows_what_would_act_on_it(string typed, string shown) => Assert.Equal(shown, VisibleText.Of(typed));

    [Property]
    public bool No_text_reaches_a_terminal_with_a_control_character(string? text) => !VisibleText.Of(text ?? string.Empty).Any(char.IsControl);

    [Theory]
    [InlineData("2", "10")]
    [InlineData("A2", "A10")]
    [InlineData("A2", "B1")]
    [InlineData("U1.9", "U1.12")]
    [InlineData("1", "1a")]
    public void Pad_names_sort_as_people_count(string first, string second)
    {
        Assert.True(new PadId(first).CompareTo(new PadId(second)) < 0);
        Assert.True(new PadId(second).CompareTo(new PadId(first)) > 0);
    }

    [Theory]
    [InlineData("")]
    [InlineData("a b")]
    [InlineData("a,b")]
    [InlineData("\u001b")]
    public void A_pad_name_that_cannot_be_typed_is_refused(string name) => Assert.Throws<ArgumentException>(() => new PadId(name));
}
