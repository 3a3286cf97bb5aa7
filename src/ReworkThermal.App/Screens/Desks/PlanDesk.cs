using System.Globalization;
using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Reports;
using ReworkThermal.Core.Tools;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Plans by the plan search, for the request on the screen.</summary>
/// <param name="workshop">The data folders.</param>
/// <param name="melting">The phase engine.</param>
/// <param name="sites">Finds a joint on its board.</param>
internal sealed class PlanDesk(Workshop workshop, MeltingShelf melting, PadReckoner sites) : IPlanDesk
{
    public PlanAnswer Plan(PlanForm form, Action<PlanProgress> progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(progress);
        SiteChoice choice = sites.Site(new Core.Jobs.JobBrief(ScreenWords.NoJob, form[PlanField.Board], form[PlanField.Joint]));
        if (choice is not SiteChoice.Chosen { Site: { } site })
        {
            return new PlanAnswer.Refused(PlanField.Joint, (choice as SiteChoice.Missing)?.Reason ?? ScreenBudgetWords.NoSite);
        }

        if (site.Joint is not ThroughJoint)
        {
            return new PlanAnswer.Refused(PlanField.Joint, ScreenPlanWords.ThroughOnly);
        }

        if (Solder(form[PlanField.BaseSolder]) is not { } own)
        {
            return new PlanAnswer.Refused(PlanField.BaseSolder, ScreenPlanWords.FieldNeeded);
        }

        if (Solder(form[PlanField.Refill]) is not { } refill)
        {
            return new PlanAnswer.Refused(PlanField.Refill, ScreenPlanWords.FieldNeeded);
        }

        PlanRequest request = new()
        {
            Title = $"{form[PlanField.Joint]} on {form[PlanField.Board]}",
            BoardName = form[PlanField.Board],
            JointName = form[PlanField.Joint],
            Site = site,
            Side = form[PlanField.Side] == "top" ? BoardSide.Top : BoardSide.Bottom,
            BaseSolder = own,
            Refill = refill,
            Prior = workshop.Limits.PriorOrNull(form[PlanField.EarlierHeat]) ?? workshop.Limits.Priors[0],
            Bench = Bench(form),
            Limits = Limits(form),
            Scatter = workshop.Scatter,
            Advice = workshop.Planning.Advice,
            Assumed = [ScreenPlanWords.AllAlloys(workshop.Alloys.Dilutions.Count), ScreenPlanWords.UsualLimits],
        };
        PlanOutcome outcome = new PlanSearch(melting.Engine, melting.Alloys.Properties, workshop.Limits).Search(request, new Told(progress), cancellation);
        return new PlanAnswer.Answered(PlanReporting.Of(request, outcome, []));
    }

    private static double Number(PlanForm form, PlanField field) => double.Parse(form[field], NumberStyles.Float, CultureInfo.InvariantCulture);

    private static Limit<T> FromForm<T>(PlanForm form, PlanField field, Limit<T> usual, Func<double, T> value)
        where T : struct =>
        form[field].Length == 0 ? usual : new Limit<T>(value(Number(form, field)), new Provenance(Limit<int>.RequestSource, EvidenceMark.Judgement), string.Empty);

    private NamedSolder? Solder(string text) =>
        workshop.Alloys.Find(text) is DesignationReading.Accepted accepted ? new NamedSolder(text, accepted.Fractions) : null;

    private Bench Bench(PlanForm form) => new()
    {
        Room = RoomOf.The(workshop, form),
        Irons = [.. PlanFormRules.Names(form[PlanField.Irons]).Select(n => workshop.Profiles.Irons[n])],
        Contact = workshop.Profiles.Contacts[Enum.Parse<ContactState>(form[PlanField.Contact], ignoreCase: true)],
        Air =
        [
            .. PlanFormRules.Names(form[PlanField.Nozzles]).Select(n => new HotAir(
                workshop.Profiles.Nozzles[n],
                VolumeFlow.FromLitersPerMinute(Number(form, PlanField.AirLitres)),
                Length.FromMillimeters(Number(form, PlanField.AirMillimetres)))),
        ],
        Preheaters = [.. PlanFormRules.Names(form[PlanField.Preheaters]).Select(n => workshop.Profiles.Preheaters[n])],
        Dilutions = workshop.Alloys.Dilutions,
        Removal = workshop.Removals.First(r => r.Name == form[PlanField.Removal]),
        WireDiameter = Length.FromMillimeters(Number(form, PlanField.WireMillimetres)),
        WireFlux = workshop.Wire.FluxShare.Central,
        FluxDensity = workshop.Wire.FluxDensity.Central,
    };

    private PlanLimits Limits(PlanForm form)
    {
        PlanLimits usual = workshop.Planning.Limits;
        return usual with
        {
            MostDwell = FromForm(form, PlanField.MostDwellSeconds, usual.MostDwell, v => Duration.FromSeconds(v)),
            MostBudgetShare = FromForm(form, PlanField.MostBudgetPercent, usual.MostBudgetShare, v => Ratio.FromPercent(v)),
            LeadFreeOnly = form[PlanField.LeadFreeOnly] == ScreenWords.Yes,
        };
    }

    /// <summary>Hands progress on from whatever thread reports it.</summary>
    private sealed class Told(Action<PlanProgress> tell) : IProgress<PlanProgress>
    {
        public void Report(PlanProgress value) => tell(value);
    }
}
