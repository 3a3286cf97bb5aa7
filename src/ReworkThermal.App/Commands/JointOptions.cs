using System.CommandLine;
using ReworkThermal.App.Wording;

namespace ReworkThermal.App.Commands;

/// <summary>Options that say which solder in which joint is meant.</summary>
internal sealed class JointOptions
{
    private readonly Option<string> _joint = new("--joint") { Description = HelpText.Joint, HelpName = "name", Required = true };
    private readonly Option<string?> _board = new("--board") { Description = HelpText.Board, HelpName = "name" };
    private readonly Option<string?> _solder = new("--solder") { Description = HelpText.Solder, HelpName = "composition" };
    private readonly PickedUp _pickedUp = new();

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Add(_joint);
        command.Add(_board);
        command.Add(_solder);
        _pickedUp.AddTo(command);
    }

    /// <summary>Reads what was given.</summary>
    internal JointWish Read(ParseResult parse) =>
        new(parse.GetRequiredValue(_joint), parse.GetValue(_board), parse.GetValue(_solder), _pickedUp.Read(parse));
}
