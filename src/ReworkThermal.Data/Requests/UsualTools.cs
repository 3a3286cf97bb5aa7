using System.Globalization;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Evidence;
using ReworkThermal.Core.Tools;
using UnitsNet;

namespace ReworkThermal.Data.Requests;

/// <summary>
/// What is taken of tools where nobody says it, once for touches, requests, cases and screens, and what of it was needed. A tip is
/// tinned: that is the normal case, and flooded is for solder and flux fed with the touch, which only who feeds them knows. All of it
/// is judgement.
/// </summary>
public sealed class UsualTools
{
    /// <summary>How a tip meets the joint.</summary>
    public const ContactState Contact = ContactState.Tinned;

    /// <summary>The flux between tip and joint: nobody solders on purpose with spent flux.</summary>
    public const FluxState Flux = FluxState.Fresh;

    /// <summary>Distance of nozzle and board in nozzle diameters.</summary>
    public const double NozzleDiameters = 4;

    private readonly List<string> _assumed = [];

    /// <summary>What was assumed, one clause each.</summary>
    public IReadOnlyList<string> Assumed => _assumed;

    /// <summary>What was assumed as a sentence; empty when everything was said.</summary>
    public IEnumerable<string> Sentences => _assumed.Count == 0 ? [] : [$"Assumed: {string.Join("; ", _assumed)}."];

    /// <summary>How the tip meets the joint.</summary>
    /// <param name="said">What was said, or null.</param>
    /// <returns>What holds.</returns>
    public ContactState ContactOr(ContactState? said) =>
        said ?? Assume(Contact, $"the tip is {Contact.Word()} on the joint ({ContactState.Flooded.Word()} is for solder and flux fed with the touch)");

    /// <summary>The flux between tip and joint.</summary>
    /// <param name="said">What was said, or null.</param>
    /// <returns>What holds.</returns>
    public FluxState FluxOr(FluxState? said) => said ?? Assume(Flux, $"the flux is {Flux.Word()}");

    /// <summary>Distance of nozzle and board.</summary>
    /// <param name="said">What was said, or null.</param>
    /// <param name="nozzle">The nozzle.</param>
    /// <returns>What holds.</returns>
    public Length DistanceOr(Length? said, AirNozzle nozzle)
    {
        ArgumentNullException.ThrowIfNull(nozzle);
        Length usual = nozzle.Diameter * NozzleDiameters;
        return said ?? Assume(usual, string.Create(CultureInfo.InvariantCulture, $"the {nozzle.Name} is held {usual.Millimeters:0.#} mm from the board, {NozzleDiameters:0} of its diameters"));
    }

    /// <summary>Face of the board that tools work on: the solder side of a hole, the side of a surface joint.</summary>
    /// <param name="said">What was said, or null.</param>
    /// <param name="joint">The joint.</param>
    /// <returns>What holds.</returns>
    public BoardSide SideOr(BoardSide? said, Joint joint)
    {
        BoardSide usual = joint is ThroughJoint ? BoardSide.Bottom : BoardSide.Top;
        return said ?? Assume(usual, $"tools work on the {usual.Word()} of the board");
    }

    private T Assume<T>(T usual, string clause)
    {
        if (!_assumed.Contains(clause, StringComparer.Ordinal))
        {
            _assumed.Add(clause);
        }

        return usual;
    }
}
