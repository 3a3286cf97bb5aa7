using ReworkThermal.App.Commands;
using ReworkThermal.App.Screens.State;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using ReworkThermal.Core.Phases;
using ReworkThermal.Data.Profiles;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Screens.Desks;

/// <summary>Mixes by the phase engine.</summary>
/// <param name="workshop">The data folders.</param>
/// <param name="engine">Phase equilibria.</param>
internal sealed class MixDesk(Workshop workshop, PhaseEngine engine) : IMixDesk
{
    // Only the proportions count where a joint gives no volume.
    private static readonly Mass _anyAmount = Mass.FromMilligrams(100);

    private readonly CleaningSearch _cleaning = new(engine);

    public MixAnswer Reckon(MixQuestion question, CancellationToken cancellation)
    {
        List<string> remarks = [];
        if (Find(question.BaseSolder, MixField.BaseSolder, remarks, out MassFractions? own) is { } wrongBase)
        {
            return wrongBase;
        }

        if (Find(question.Alloy, MixField.Alloy, remarks, out MassFractions? added) is { } wrongAlloy)
        {
            return wrongAlloy;
        }

        if (Find(question.Refill, MixField.Refill, remarks, out MassFractions? refill) is { } wrongRefill)
        {
            return wrongRefill;
        }

        SolderCharge? known = JointCharge(question, own!, remarks);
        SolderCharge joint = known ?? new SolderCharge(_anyAmount, own!);
        SolderCharge dilution = new(joint.AmountForShare(Ratio.FromPercent(question.SharePercent)), added!);
        SolderCharge mix = question.SharePercent > 0 ? joint.With(dilution) : joint;
        if (engine.MeltingOf(mix.Fractions) is not MeltingOutcome.Found { Behaviour: { } melting })
        {
            return new MixAnswer.NoAnswer(ScreenMixWords.NotCertified);
        }

        cancellation.ThrowIfCancellationRequested();
        double? scheil = engine.SolidifyWithoutDiffusion(mix.Fractions) is ScheilOutcome.Found freezing ? freezing.Path.End.DegreesCelsius : null;
        remarks.AddRange(question.SharePercent > 0 ? MixHazards.Of(own!, added!) : []);
        remarks.AddRange(melting.Caveats);
        ResidueFigures? residue = known is null ? null : Residue(question, joint, dilution, refill!, cancellation);
        return new MixAnswer.Reckoned(new MixFigures(
            melting.Flow.DegreesCelsius,
            melting.Liquidus.DegreesCelsius,
            melting.Solidus.DegreesCelsius,
            scheil,
            melting.Uncertainty.Kelvins,
            [.. melting.Curve.Points.Select(p => (p.Temperature.DegreesCelsius, p.LiquidMassFraction))],
            known?.Amount.Milligrams,
            known is null ? null : dilution.Amount.Milligrams,
            residue,
            remarks));
    }

    private MixAnswer.Refused? Find(string text, MixField field, List<string> remarks, out MassFractions? fractions)
    {
        DesignationReading reading = workshop.Alloys.Find(text);
        fractions = (reading as DesignationReading.Accepted)?.Fractions;
        remarks.AddRange((reading as DesignationReading.Accepted)?.Notes ?? []);
        return reading is DesignationReading.Refused refused ? new MixAnswer.Refused(field, refused.Reason) : null;
    }

    private SolderCharge? JointCharge(MixQuestion question, MassFractions solder, List<string> remarks)
    {
        if (!workshop.Profiles.Joints.TryGetValue(question.Joint, out JointProfile? profile)
            || profile.Joint is not ThroughJoint joint
            || !workshop.Profiles.Boards.TryGetValue(question.Board, out Board? board))
        {
            return null;
        }

        if (JointOnBoard.Put(profile, board, out _) is { } misfit)
        {
            remarks.Add(Refusals.DoesNotFit(question.Joint, question.Board, misfit));
            return null;
        }

        return JointSolder.ChargeIn(joint, board.StackUp.Thickness, solder, workshop.Alloys.Properties);
    }

    private ResidueFigures? Residue(MixQuestion question, SolderCharge joint, SolderCharge dilution, MassFractions refill, CancellationToken cancellation)
    {
        RemovalMethod? removal = workshop.Removals.FirstOrDefault(r => r.Name == question.Removal);
        if (removal is null || question.Passes == 0)
        {
            return null;
        }

        // Later passes flush with the refit alloy.
        CleaningQuestion cleaning = new(joint, dilution, refill, refill, removal, question.Passes);
        if (_cleaning.After(cleaning, question.Passes) is not { } final)
        {
            return null;
        }

        int? needed = null;
        for (int passes = 1; passes <= MixQuestion.MostPasses && needed is null; passes++)
        {
            cancellation.ThrowIfCancellationRequested();
            needed = _cleaning.After(cleaning, passes) is { IsClean: true } ? passes : null;
        }

        return new ResidueFigures(
            final.Residue.Amount.Milligrams / final.Joint.Amount.Milligrams,
            final.Melting.Solidus.DegreesCelsius,
            final.Freezing.End.DegreesCelsius,
            final.Freezing.LiquidMassFractionAt(Temperature.FromDegreesCelsius(100)),
            final.Freezing.LiquidMassFractionAt(CleaningQuestion.LowMelting),
            needed);
    }
}
