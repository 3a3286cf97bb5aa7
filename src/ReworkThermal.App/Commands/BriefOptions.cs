using System.CommandLine;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Composition;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Profiles;

namespace ReworkThermal.App.Commands;

/// <summary>Options that describe a job.</summary>
internal sealed class BriefOptions
{
    private readonly Option<string?> _board = new("--board") { Description = HelpText.JobBoard, HelpName = "name" };
    private readonly Option<string?> _joint = new("--joint") { Description = HelpText.JobJoint, HelpName = "name" };
    private readonly Option<string?> _connector = new("--connector") { Description = HelpText.JobConnector, HelpName = "name" };
    private readonly Option<string?> _solder = new("--solder") { Description = HelpText.JobSolder, HelpName = "composition" };
    private readonly Option<bool?> _leadFree = new("--lead-free") { Description = HelpText.JobLeadFree };

    /// <summary>Adds the options to a command.</summary>
    internal void AddTo(Command command)
    {
        command.Add(_board);
        command.Add(_joint);
        command.Add(_connector);
        command.Add(_solder);
        command.Add(_leadFree);
    }

    /// <summary>What is known of a job, with what the command line says.</summary>
    internal JobBrief Over(JobBrief known, ParseResult parse) => known with
    {
        Board = parse.GetValue(_board) ?? known.Board,
        Joint = parse.GetValue(_joint) ?? known.Joint,
        Connector = parse.GetValue(_connector) ?? known.Connector,
        BaseSolder = parse.GetValue(_solder) ?? known.BaseSolder,
        LeadFreeOnly = parse.GetValue(_leadFree) ?? known.LeadFreeOnly,
    };

    /// <summary>Whether every profile and alloy that a brief names is there.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="shell">Where the data are.</param>
    /// <returns>Null when all is well, or the complaint.</returns>
    internal static string? Fault(JobBrief brief, Shell shell)
    {
        if (brief is { Board: null, Joint: null, Connector: null, BaseSolder: null })
        {
            return null;
        }

        ProfileLibrary profiles = ProfileLibrary.Load(shell.Data);
        return Missing("board", brief.Board, profiles.Boards.Keys)
            ?? Missing("joint", brief.Joint, profiles.Joints.Keys)
            ?? Missing("connector", brief.Connector, profiles.Connectors.Keys)
            ?? (brief.BaseSolder is { } solder && AlloyShelf.Load(shell.Data).Find(solder) is DesignationReading.Refused refused ? refused.Reason : null);
    }

    private static string? Missing(string kind, string? name, IEnumerable<string> known) =>
        name is null || known.Contains(name, StringComparer.Ordinal) ? null : JobWords.UnknownProfile(kind, name, known);
}
