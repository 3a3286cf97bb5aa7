using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Screens.Update;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Solders;
using ReworkThermal.Core.Planning.Touches;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Turns the request on the screen into one that the planner takes.</summary>
/// <param name="workshop">The data folders; used on one thread only.</param>
internal sealed class PlanRequests(JobWorkshop workshop)
{
    private readonly Workshop _shelf = workshop.Workshop;

    /// <summary>Reads a form.</summary>
    /// <param name="form">The form; every field for itself is in order.</param>
    /// <param name="refused">What is wrong with the whole, or null.</param>
    /// <returns>The request, or null when it is refused.</returns>
    internal PlanRequest? Of(PlanForm form, out PlanAnswer.Refused? refused)
    {
        JobSite place = workshop.SiteOf(new JobBrief(ScreenWords.NoJob, form[PlanField.Board], form[PlanField.Joint]));
        NamedSolder? own = Solder(form[PlanField.BaseSolder]);
        NamedSolder? refill = Solder(form[PlanField.Refill]);
        refused = place is JobSite.Unknown unknown ? new PlanAnswer.Refused(PlanField.Joint, unknown.Reason)
            : place is JobSite.Known { Site.Joint: not ThroughJoint } ? new PlanAnswer.Refused(PlanField.Joint, ScreenPlanWords.ThroughOnly)
            : own is null ? new PlanAnswer.Refused(PlanField.BaseSolder, ScreenPlanWords.FieldNeeded)
            : refill is null ? new PlanAnswer.Refused(PlanField.Refill, ScreenPlanWords.FieldNeeded)
            : null;
        if (refused is not null)
        {
            return null;
        }

        UsualTools usual = new();
        JointSite site = ((JobSite.Known)place).Site;
        PlanRequest request = new()
        {
            Title = $"{form[PlanField.Joint]} on {form[PlanField.Board]}",
            BoardName = form[PlanField.Board],
            JointName = form[PlanField.Joint],
            Site = site,
            Side = usual.SideOr(FormReading.Side(form), site.Joint),
            BaseSolder = own!,
            Refill = refill!,
            Prior = _shelf.Limits.PriorOrNull(ScreenPlanWords.EarlierHeatName(form[PlanField.EarlierHeat])) ?? _shelf.Limits.Priors[0],
            Bench = Bench(form, usual),
            Limits = Limits(form),
            Scatter = _shelf.Scatter,
            Advice = _shelf.Planning.Advice,
            Assumed = [],
        };
        return request with { Assumed = [.. usual.Assumed, ScreenPlanWords.AllAlloys(_shelf.Alloys.UsualDilutions.Count), ScreenPlanWords.UsualLimits] };
    }

    private static Limit<T> FromForm<T>(PlanForm form, PlanField field, Limit<T> usual, Func<double, T> value)
        where T : struct =>
        form[field].Length == 0 ? usual : new Limit<T>(value(FormReading.Number(form, field)), new Provenance(Limit<int>.RequestSource, EvidenceMark.Judgement), string.Empty);

    private NamedSolder? Solder(string text) =>
        _shelf.Alloys.Find(text) is DesignationReading.Accepted accepted ? new NamedSolder(text, accepted.Fractions) : null;

    private Bench Bench(PlanForm form, UsualTools usual) => new()
    {
        Room = FormReading.Room(_shelf, form),
        Irons = [.. PlanFormRules.Names(form[PlanField.Irons]).Select(n => _shelf.Profiles.Irons[n])],
        Contact = _shelf.Profiles.Contacts[usual.ContactOr(FormReading.Contact(form))],
        Air =
        [
            .. PlanFormRules.Names(form[PlanField.Nozzles]).Select(n => _shelf.Profiles.Nozzles[n]).Select(n => new HotAir(
                n,
                VolumeFlow.FromLitersPerMinute(FormReading.Number(form, PlanField.AirLitres)),
                usual.DistanceOr(FormReading.Distance(form), n))),
        ],
        Preheaters = [.. PlanFormRules.Names(form[PlanField.Preheaters]).Select(n => _shelf.Profiles.Preheaters[n])],
        Dilutions = _shelf.Alloys.UsualDilutions,
        Removal = _shelf.Removals.First(r => r.Name == form[PlanField.Removal]),
        WireDiameter = Length.FromMillimeters(FormReading.Number(form, PlanField.WireMillimetres)),
        WireFlux = _shelf.Wire.FluxShare.Central,
        FluxDensity = _shelf.Wire.FluxDensity.Central,
    };

    private PlanLimits Limits(PlanForm form)
    {
        PlanLimits usual = _shelf.Planning.Limits;
        return usual with
        {
            MostDwell = FromForm(form, PlanField.MostDwellSeconds, usual.MostDwell, v => Duration.FromSeconds(v)),
            MostBudgetShare = FromForm(form, PlanField.MostBudgetPercent, usual.MostBudgetShare, v => Ratio.FromPercent(v)),
            LeadFreeOnly = form[PlanField.LeadFreeOnly] == ScreenWords.Yes,
        };
    }
}
