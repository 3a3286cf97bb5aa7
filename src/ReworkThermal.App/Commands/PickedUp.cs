using System.CommandLine;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>Copper, silver and gold that the solder has taken up from barrel, pad, leg and finish, as options of a command.</summary>
internal sealed class PickedUp
{
    private const double MostMilligrams = 100;

    private readonly Option<double?> _copper = Numbers.Option("--copper-mg", HelpText.Copper, 0, MostMilligrams, "mg");
    private readonly Option<double?> _silver = Numbers.Option("--silver-mg", HelpText.Silver, 0, MostMilligrams, "mg");
    private readonly Option<double?> _goldArea = Numbers.Option("--gold-area", HelpText.GoldArea, 0, 1000, "mm2");
    private readonly Option<double?> _goldThickness = Numbers.Option("--gold-thickness", HelpText.GoldThickness, 0, 50, "um");

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Add(_copper);
        command.Add(_silver);
        command.Add(_goldArea);
        command.Add(_goldThickness);
        command.Validators.Add(result =>
        {
            if (result.GetResult(_goldArea) is null != result.GetResult(_goldThickness) is null)
            {
                result.AddError(Refusals.GoldHalf);
            }
        });
    }

    /// <summary>Reads what was given.</summary>
    /// <returns>Masses, zero where an option was not given; the gold, null when none was named.</returns>
    internal (Mass Copper, Mass Silver, GoldPlating? Gold) Read(ParseResult parse) => (
        Mass.FromMilligrams(parse.GetValue(_copper) ?? 0),
        Mass.FromMilligrams(parse.GetValue(_silver) ?? 0),
        parse.GetValue(_goldArea) is { } area && parse.GetValue(_goldThickness) is { } thickness
            ? new GoldPlating(Area.FromSquareMillimeters(area), Length.FromMicrometers(thickness))
            : null);

    /// <summary>The solder with what it has taken up.</summary>
    internal static SolderCharge In(SolderCharge solder, (Mass Copper, Mass Silver, GoldPlating? Gold) metal, SolderProperties properties) => solder
        .PickingUp(Element.Cu, metal.Copper)
        .PickingUp(Element.Ag, metal.Silver)
        .PickingUp(Element.Au, metal.Gold?.MassOf(properties) ?? Mass.Zero);
}
