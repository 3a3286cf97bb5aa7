using System.CommandLine;
using ReworkThermal.App.Rendering;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;
using ReworkThermal.Data.Alloys;
using ReworkThermal.Data.Store;

namespace ReworkThermal.App.Commands;

/// <summary>The command <c>store</c>: care of the job store itself.</summary>
internal static class StoreCommand
{
    /// <summary>Defines <c>store</c> and what is under it.</summary>
    internal static Command Define(Shell shell, JobOptions options) => new("store", HelpText.StoreCare)
    {
        options.Job,
        Backup(shell, options),
        Restore(shell, options),
        Export(shell, options),
        Import(shell, options),
        Check(shell, options),
    };

    private static Command Backup(Shell shell, JobOptions options)
    {
        Argument<string> path = FilePaths.Argument("file", HelpText.TargetFile);
        Option<bool> force = CommonOptions.Force();
        Command command = new("backup", HelpText.StoreBackup) { path, force };
        command.SetAction(parse => options.OnStore(parse, shell, mayCreate: false, access =>
        {
            access.Store.BackupTo(parse.GetRequiredValue(path), parse.GetValue(force), Outputs.Of(shell.Data, access.Store.Path));
            return new Reply.Answered(new WrittenView(parse.GetRequiredValue(path)));
        }));
        return command;
    }

    // The store is not opened first: it may be damaged, and nobody may have it open.
    private static Command Restore(Shell shell, JobOptions options)
    {
        Argument<string> path = FilePaths.Argument("file", HelpText.BackupFile);
        Command command = new("restore", HelpText.StoreRestore) { path };
        command.SetAction(parse =>
        {
            RestoreSummary summary = StoreRestore.Restore(parse.GetValue(options.Store) ?? StorePlace.Default(), parse.GetRequiredValue(path), shell.Clock);
            return Front.Show(new Reply.Answered(new RestoreView(summary)), parse.GetValue(options.Json), shell);
        });
        return command;
    }

    private static Command Export(Shell shell, JobOptions options)
    {
        Argument<string> path = FilePaths.Argument("file", HelpText.TargetFile);
        Option<bool> force = CommonOptions.Force();
        Command command = new("export", HelpText.StoreExport) { path, force };
        command.SetAction(parse => options.OnStore(parse, shell, mayCreate: false, access =>
        {
            string? job = parse.GetValue(options.Job);
            JobPick? pick = job is null ? null : access.Pick(job);
            if (pick is JobPick.Refused refused)
            {
                return new Reply.Misused(refused.Reason);
            }

            IReadOnlyList<JobId>? which = pick is JobPick.Picked picked ? [picked.State.Id] : null;
            JobArchive.ExportTo(access.Store, which, parse.GetRequiredValue(path), parse.GetValue(force), Outputs.Of(shell.Data, access.Store.Path));
            return new Reply.Answered(new WrittenView(parse.GetRequiredValue(path)));
        }));
        return command;
    }

    private static Command Import(Shell shell, JobOptions options)
    {
        Argument<string> path = FilePaths.Argument("file", HelpText.SourceFile);
        Command command = new("import", HelpText.StoreImport) { path };
        command.SetAction(parse => options.OnStore(parse, shell, mayCreate: true, access =>
            new Reply.Answered(new ImportView(JobArchive.ImportFrom(access.Store, parse.GetRequiredValue(path), AlloyShelf.Load(shell.Data).Find)))));
        return command;
    }

    private static Command Check(Shell shell, JobOptions options)
    {
        Command command = new("check", HelpText.StoreCheck);
        command.SetAction(parse => options.OnStore(parse, shell, mayCreate: false, access =>
        {
            StoreExamination examination = access.Store.Examine();
            ExaminationView view = new(access.Store.Path, examination);
            return examination.Problems.Count == 0 ? new Reply.Answered(view) : new Reply.AnsweredStoreTrouble(view);
        }));
        return command;
    }
}
