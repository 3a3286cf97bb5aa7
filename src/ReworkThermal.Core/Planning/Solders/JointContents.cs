using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.Core.Planning.Solders;

/// <summary>
/// Follows the solder in a joint through the touches of its pad: full of the base solder at first; what is melted in mixes with it; a
/// wick takes its usual share of everything that is molten; a refill of unknown mass fills the joint up again. Copper taken up from
/// barrel and pad is left out of the composition.
/// </summary>
/// <param name="full">Solder that fills the joint.</param>
/// <param name="removed">Share of the molten solder that one go takes away.</param>
/// <param name="find">Reads the designation of an alloy.</param>
internal sealed class JointContents(SolderCharge full, Ratio removed, Func<string, DesignationReading> find)
{
    private readonly List<string> _notes = [];
    private SolderCharge? _changed;

    /// <summary>Solder in the joint now.</summary>
    internal SolderCharge Now
    {
        get => _changed ?? full;
        set => _changed = value;
    }

    /// <summary>What could not be followed exactly, one sentence each.</summary>
    internal IReadOnlyList<string> Notes => _notes;

    /// <summary>Solder of a joint that is filled.</summary>
    internal static SolderCharge Full(JointSite site, MassFractions solder, SolderProperties properties) => site.Joint switch
    {
        ThroughJoint through => JointSolder.ChargeIn(through, site.Board.StackUp.Thickness, solder, properties),
        SurfaceJoint surface => new SolderCharge(surface.PadArea * surface.SolderThickness * properties.SolidDensity(solder), solder),
        _ => throw new InvalidOperationException("unknown kind of joint"),
    };

    /// <summary>Puts in what a touch brings, before it is hot.</summary>
    /// <param name="touch">The touch.</param>
    /// <param name="number">Number of its entry.</param>
    /// <returns>Whether fresh solder came to the joint.</returns>
    internal bool Bring(Exposure touch, int number)
    {
        bool fresh = false;
        if (touch.Added is { } added)
        {
            fresh = Add(added, touch.Purpose, number);
        }

        if (touch.Mix is { } mix)
        {
            if (find(mix) is DesignationReading.Accepted accepted)
            {
                Now = Now with { Fractions = accepted.Fractions };
            }
            else
            {
                Note(number, "its mix cannot be read; the computed mix is used instead");
            }
        }

        return fresh;
    }

    /// <summary>Takes out what a melted touch took away.</summary>
    /// <param name="purpose">What the touch was for.</param>
    internal void Leave(TouchPurpose purpose)
    {
        if (purpose is TouchPurpose.Wick)
        {
            Now = Now.Without(removed);
        }
    }

    private bool Add(AddedSolder added, TouchPurpose purpose, int number)
    {
        if (find(added.Designation) is not DesignationReading.Accepted alloy)
        {
            Note(number, "the added alloy cannot be read, so it is missing from the mix");
            return false;
        }

        if (added.Mass is { } mass)
        {
            Now = Now.With(new SolderCharge(mass, alloy.Fractions));
            return true;
        }

        if (purpose is not TouchPurpose.Refill)
        {
            Note(number, "the mass of the added alloy is unknown; it is taken as what fills the joint up");
        }

        bool hasRoom = Now.Amount < full.Amount;
        Now = Cleaning.Refilled(Now, alloy.Fractions, full.Amount);
        return hasRoom;
    }

    private void Note(int number, string what) => _notes.Add(string.Create(CultureInfo.InvariantCulture, $"Touch {number}: {what}."));
}

/// <summary>A solder as a request names it.</summary>
/// <param name="Name">Name or designation.</param>
/// <param name="Fractions">Composition by mass.</param>
public sealed record NamedSolder(string Name, MassFractions Fractions);
