using System.Globalization;
using ReworkThermal.Core.Damage.Exposures;
using ReworkThermal.Core.Damage.Mechanisms;
using UnitsNet;

namespace ReworkThermal.Core.Damage.Pulling;

/// <summary>
/// The pull check: capacity now, P0 f(T) K w for the bond and pi D h sigma for the barrel, against a free, nudged or pried lead, and
/// before all else whether every joint of the part flows. A joint that is frozen by one part in a hundred can already tear a hot pad.
/// </summary>
public static class PullChecker
{
    /// <summary>Checks a pad.</summary>
    /// <param name="model">The pad's model.</param>
    /// <param name="state">What the pad has had.</param>
    /// <param name="padNow">Temperature of the pad now.</param>
    /// <param name="joints">Every joint of the part that is to come off.</param>
    /// <returns>The check; 'do not pull' when no joint is given, because then nothing is known to flow.</returns>
    public static PullCheck Check(DamageModel model, PadDamage state, Temperature padNow, IReadOnlyList<JointHeat> joints)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(joints);
        DamageParameters parameters = model.Parameters;
        Spread bond = Bond(model, state, padNow);
        Spread barrel = Barrel(model, state);
        double scatter = Math.Exp(parameters.Adhesion.CapacityScatter.Central);
        Spread capacity = new((bond.Low + barrel.Low) / scatter, bond.Central + barrel.Central, (bond.High + barrel.High) * scatter);
        List<PullMargin> margins =
        [
            Margin(PullDemand.Free, parameters.Pull.Free, capacity),
            Margin(PullDemand.Nudged, parameters.Pull.Nudged, capacity),
            Margin(PullDemand.Pried, parameters.Pull.Pried, capacity),
        ];

        // The hot floor and the forces are judgement, and so is everything built on them.
        SupportLevel support = new[]
        {
            parameters.Adhesion.HotFloor.Support, parameters.Adhesion.LossPerMelt.Support, parameters.Copper.HotStrength.Support, parameters.Pull.Free.Support,
        }.Max();
        return new PullCheck(bond, barrel, capacity, margins, PressedEdge(model, capacity), Verdict(margins, joints), support);
    }

    /// <summary>
    /// Part of a force on a pad's edge that lifts its far edge: the pad tips over the rim of its hole, F o/(w - o) with the overhang o
    /// between rim and edge and the width w; a pad without a hole tips over its middle, where both levers are the same.
    /// </summary>
    /// <param name="pad">Shape of the pad.</param>
    /// <returns>The share, 0 to 1.</returns>
    public static double LiftingShare(PadGeometry pad)
    {
        ArgumentNullException.ThrowIfNull(pad);
        if (pad is not PadGeometry.Through through)
        {
            return 1;
        }

        double overhang = (pad.Width - through.Hole).Meters / 2;
        return overhang / (pad.Width.Meters - overhang);
    }

    private static EdgePress PressedEdge(DamageModel model, Spread capacity)
    {
        double share = LiftingShare(model.Pad);
        RatedEstimate<Force> force = model.Parameters.Pull.PressedEdge;
        Spread margin = Against(force, new Spread(capacity.Low / share, capacity.Central / share, capacity.High / share));
        return new EdgePress(force, share, margin, OutcomeOf(margin));
    }

    private static Spread Bond(DamageModel model, PadDamage state, Temperature padNow)
    {
        AdhesionParameters adhesion = model.Parameters.Adhesion;
        RatedEstimate<ForcePerLength> peel = model.Pad.Foil == FoilProfile.LowProfile ? adhesion.LowProfilePeel : model.Laminate.PeelStrength;
        Spread sum = model.LaminateSum(state);
        Spread hot = model.Bond.HotFactor(padNow);
        Spread kept = model.Bond.Of(sum, state);
        double width = model.Pad.Width.Meters;
        return new Spread(
            peel.Low.NewtonsPerMeter * width * hot.Low * kept.Low,
            peel.Central.NewtonsPerMeter * width * hot.Central * kept.Central,
            peel.High.NewtonsPerMeter * width * hot.High * kept.High);
    }

    private static Spread Barrel(DamageModel model, PadDamage state)
    {
        if (model.Pad is not PadGeometry.Through hole)
        {
            return default;
        }

        RatedEstimate<Pressure> strength = model.Parameters.Copper.HotStrength;
        return new Spread(
            Holds(hole.Copper.Low, state.Harsh.Copper, strength.Low),
            Holds(hole.Copper.Central, state.Central.Copper, strength.Central),
            Holds(hole.Copper.High, state.Mild.Copper, strength.High));

        double Holds(Length made, CopperTrack copper, Pressure pressure) =>
            Math.PI * hole.Hole.Meters * Math.Max(0, made.Meters - copper.LostM) * pressure.Pascals;
    }

    private static PullMargin Margin(PullDemand demand, RatedEstimate<Force> force, Spread capacity)
    {
        Spread margin = Against(force, capacity);
        return new PullMargin(demand, force, margin, OutcomeOf(margin));
    }

    private static Spread Against(RatedEstimate<Force> force, Spread capacity) =>
        new(capacity.Low / force.High.Newtons, capacity.Central / force.Central.Newtons, capacity.High / force.Low.Newtons);

    private static PullOutcome OutcomeOf(Spread margin) =>
        margin.Low >= 1 ? PullOutcome.Holds : margin.High < 1 ? PullOutcome.Tears : PullOutcome.Doubtful;

    private static PullVerdict Verdict(List<PullMargin> margins, IReadOnlyList<JointHeat> joints)
    {
        if (joints.Count == 0)
        {
            return new PullVerdict.DoNotPull([], "do not pull: no joint of the part is known to flow");
        }

        List<JointHeat> held = [.. joints.Where(j => j.Holds)];
        if (held.Count > 0)
        {
            List<(string Name, double Kelvins)> below = [.. held.Where(j => j.Flow is not null).Select(j => (j.Name, (j.Flow!.Value - j.Coldest).Kelvins))];
            (string Name, double Kelvins) worst = below.MaxBy(j => j.Kelvins);
            List<string> reasons =
            [
                .. below.Count == 0 ? (string[])[] : [string.Create(CultureInfo.InvariantCulture, $"{below.Count} of {joints.Count} joints are below their flow temperature, {worst.Name} by {worst.Kelvins:0} K")],
                .. below.Count == held.Count ? (string[])[] : [$"the flow temperature is not known of {string.Join(", ", held.Where(j => j.Flow is null).Select(j => j.Name))}"],
            ];
            return new PullVerdict.DoNotPull([.. held.Select(j => j.Name)], $"do not pull: {string.Join("; ", reasons)}");
        }

        PullMargin? hardest = margins.TakeWhile(m => m.Outcome == PullOutcome.Holds).LastOrDefault();
        return hardest is null
            ? new PullVerdict.LiftWithoutForce(margins[0].Outcome, "every joint flows, but this hot pad is not sure to hold even a free lead: lift straight, without any force, and expect to bond the pad")
            : new PullVerdict.MayLift(hardest.Demand, "every joint flows; lift straight, and with no more force than named");
    }
}
