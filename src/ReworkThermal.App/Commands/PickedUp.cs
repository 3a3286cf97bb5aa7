using System.CommandLine;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Mixing;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>Copper and silver that the solder has taken up from barrel, pad and finish, as options of a command.</summary>
internal sealed class PickedUp
{
    private const double MostMilligrams = 100;

    private readonly Option<double?> _copper = Numbers.Option("--copper-mg", HelpText.Copper, 0, MostMilligrams, "mg");
    private readonly Option<double?> _silver = Numbers.Option("--silver-mg", HelpText.Silver, 0, MostMilligrams, "mg");

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Add(_copper);
        command.Add(_silver);
    }

    /// <summary>Reads what was given.</summary>
    /// <returns>Masses; zero where an option was not given.</returns>
    internal (Mass Copper, Mass Silver) Read(ParseResult parse) =>
        (Mass.FromMilligrams(parse.GetValue(_copper) ?? 0), Mass.FromMilligrams(parse.GetValue(_silver) ?? 0));

    /// <summary>The solder with what it has taken up.</summary>
    internal static SolderCharge In(SolderCharge solder, (Mass Copper, Mass Silver) metal) =>
        solder.PickingUp(Element.Cu, metal.Copper).PickingUp(Element.Ag, metal.Silver);
}
