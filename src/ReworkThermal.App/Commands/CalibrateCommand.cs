using System.CommandLine;
using System.Globalization;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Boards;
using ReworkThermal.Core.Planning;
using ReworkThermal.Core.Planning.Calibration;
using ReworkThermal.Data.Calibrations;
using ReworkThermal.Data.Requests;
using UnitsNet;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>calibrate add|show|forget</c>: what timed touches teach about a model of board.</summary>
internal static class CalibrateCommand
{
    /// <summary>Defines the command with its parts.</summary>
    internal static Command Define(Shell shell, Option<bool> json)
    {
        return new Command("calibrate", HelpText.Calibrate)
        {
            DefineAdd(shell, json),
            DefineShow(shell, json),
            DefineForget(shell, json),
        };
    }

    /// <summary>The folder that an option names, or the usual one.</summary>
    internal static CalibrationFolder FolderOf(string? path) => new(path ?? CalibrationPlace.Default());

    /// <summary>The option that names the folder.</summary>
    internal static Option<string?> FolderOption() => FilePaths.Option("--calibrations", HelpText.Calibrations, "folder");

    private static Command DefineAdd(Shell shell, Option<bool> json)
    {
        Argument<string> path = FilePaths.Request();
        Option<string?> folder = FolderOption();
        ObservedOptions observed = new();
        Command command = new("add", HelpText.CalibrateAdd) { path, folder };
        observed.AddTo(command);
        command.SetAction(parse => Front.Show(
            observed.Read(parse) switch
            {
                (_, { } fault) => new Reply.Misused(fault),
                ({ } wish, _) => Add(shell, parse.GetRequiredValue(path), FolderOf(parse.GetValue(folder)), wish),
                _ => throw new InvalidOperationException("neither a wish nor a fault"),
            },
            parse.GetValue(json),
            shell));
        return command;
    }

    private static Command DefineShow(Shell shell, Option<bool> json)
    {
        Argument<string> path = FilePaths.Request();
        Option<string?> folder = FolderOption();
        Command command = new("show", HelpText.CalibrateShow) { path, folder };
        command.SetAction(parse => Front.Show(Show(shell, parse.GetRequiredValue(path), FolderOf(parse.GetValue(folder))), parse.GetValue(json), shell));
        return command;
    }

    private static Command DefineForget(Shell shell, Option<bool> json)
    {
        Argument<string> path = FilePaths.Request();
        Option<string?> folder = FolderOption();
        Option<int?> touch = Numbers.WholeOption("--touch", HelpText.ForgetTouch, 1, Numbers.MostEntries);
        Command command = new("forget", HelpText.CalibrateForget) { path, folder, touch };
        command.SetAction(parse => Front.Show(
            Forget(shell, parse.GetRequiredValue(path), FolderOf(parse.GetValue(folder)), parse.GetValue(touch)),
            parse.GetValue(json),
            shell));
        return command;
    }

    private static Reply Add(Shell shell, string path, CalibrationFolder folder, ObservedWish wish)
    {
        Workshop workshop = Workshop.Load(shell.Data);
        PlanRequest request = PlanRequestFile.Read(path, workshop);
        if (Fault(workshop, request, wish) is { } fault)
        {
            return new Reply.Misused(fault);
        }

        IReadOnlyList<ObservedTouch> before = folder.Find(request.BoardName)?.Touches ?? [];
        ObservedTouch touch = new()
        {
            Number = BoardLearning.NextNumber(before),
            Joint = request.JointName,
            Side = request.Side,
            Ambient = request.Bench.Room.Room,
            Contact = request.Bench.Contact.State,
            Solder = wish.Solder ?? request.BaseSolder.Name,
            Added = wish.Alloy,
            AddedMass = Mass.FromMilligrams(wish.AddedMg ?? 0),
            Iron = wish.Iron,
            Set = Temperature.FromDegreesCelsius(wish.SetC),
            Preheater = wish.Preheater,
            Board = wish.BoardC is { } board ? Temperature.FromDegreesCelsius(board) : null,
            Seen = wish.Seen,
        };
        return Kept(shell, folder, workshop, request, [.. before, touch]);
    }

    private static Reply Show(Shell shell, string path, CalibrationFolder folder)
    {
        Workshop workshop = Workshop.Load(shell.Data);
        PlanRequest request = PlanRequestFile.Read(path, workshop);
        if (folder.Find(request.BoardName) is not { } record)
        {
            return new Reply.AnsweredNo(new CalibrationView(CalibrationReporting.Nothing(request, CalibrationWords.NothingObserved)));
        }

        return Shown(request, record.Touches, Learning(shell, folder, workshop).Fit(request, record.Touches, shell.Cancellation));
    }

    private static Reply Forget(Shell shell, string path, CalibrationFolder folder, int? number)
    {
        Workshop workshop = Workshop.Load(shell.Data);
        PlanRequest request = PlanRequestFile.Read(path, workshop);
        if (folder.Find(request.BoardName) is not { } record)
        {
            return new Reply.AnsweredNo(new CalibrationView(CalibrationReporting.Nothing(request, CalibrationWords.NothingObserved)));
        }

        List<ObservedTouch> left = number is { } one ? [.. record.Touches.Where(t => t.Number != one)] : [];
        if (number is { } missing && left.Count == record.Touches.Count)
        {
            return new Reply.Misused(Refusals.UnknownName("--touch", missing.ToString(CultureInfo.InvariantCulture), record.Touches.Select(t => t.Number.ToString(CultureInfo.InvariantCulture))));
        }

        if (left.Count > 0)
        {
            return Kept(shell, folder, workshop, request, left);
        }

        folder.Forget(request.BoardName);
        return new Reply.Answered(new CalibrationView(CalibrationReporting.Nothing(request, CalibrationWords.Forgotten)));
    }

    private static Reply Kept(Shell shell, CalibrationFolder folder, Workshop workshop, PlanRequest request, IReadOnlyList<ObservedTouch> touches) =>
        Shown(request, touches, Learning(shell, folder, workshop).Keep(request, touches, shell.Cancellation));

    private static Reply Shown(PlanRequest request, IReadOnlyList<ObservedTouch> touches, (FitOutcome Outcome, BenchCalibration? Learned) fit)
    {
        CalibrationView view = new(CalibrationReporting.Of(request, touches, fit.Outcome, fit.Learned));
        return fit.Outcome is FitOutcome.Fitted ? new Reply.Answered(view) : new Reply.AnsweredNo(view);
    }

    private static BoardLearning Learning(Shell shell, CalibrationFolder folder, Workshop workshop) => new(folder, workshop, new MeltingShelf(shell.Data).Engine);

    private static string? Fault(Workshop workshop, PlanRequest request, ObservedWish wish)
    {
        if (request.Site.Joint is not ThroughJoint)
        {
            return Refusals.PlanNeedsThrough(request.JointName);
        }

        if (!workshop.Profiles.Irons.TryGetValue(wish.Iron, out Core.Tools.Iron? iron))
        {
            return Refusals.UnknownName("--iron", wish.Iron, workshop.Profiles.Irons.Keys);
        }

        if (wish.SetC < iron.LeastSetting.DegreesCelsius || wish.SetC > iron.MostSetting.DegreesCelsius)
        {
            return Refusals.OutOfLimits("--set", wish.SetC, iron.LeastSetting.DegreesCelsius, iron.MostSetting.DegreesCelsius, "°C");
        }

        if (wish.Preheater is { } preheater && !workshop.Profiles.Preheaters.ContainsKey(preheater))
        {
            return Refusals.UnknownName("--preheater", preheater, workshop.Profiles.Preheaters.Keys);
        }

        return wish.Alloy is { } alloy && workshop.Alloys.Find(alloy) is Core.Composition.DesignationReading.Refused refused
            ? refused.Reason
            : wish.Solder is { } solder && workshop.Alloys.Find(solder) is Core.Composition.DesignationReading.Refused wrong ? wrong.Reason : null;
    }
}
