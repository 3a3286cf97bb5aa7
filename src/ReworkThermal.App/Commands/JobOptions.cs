using System.CommandLine;
using ReworkThermal.App.Wording;
using ReworkThermal.Core.Jobs;

namespace ReworkThermal.App.Commands;

/// <summary>Options that all commands about jobs share, and what follows from them: an open store, a chosen job, a recorded event.</summary>
/// <param name="Json">Whether the answer is wanted as JSON.</param>
/// <param name="Store">Path of the job store.</param>
/// <param name="Job">The job.</param>
internal sealed record JobOptions(Option<bool> Json, Option<string?> Store, Option<string?> Job)
{
    /// <summary>Makes the options.</summary>
    internal static JobOptions Make(Option<bool> json)
    {
        Option<string?> store = FilePaths.Option("--store", HelpText.Store);
        store.Recursive = true;
        return new JobOptions(json, store, new Option<string?>("--job") { Description = HelpText.Job, HelpName = "job", Recursive = true });
    }

    /// <summary>Answers a question to the store.</summary>
    internal int OnStore(ParseResult parse, Shell shell, bool mayCreate, Func<JobAccess, Reply> answer)
    {
        Reply reply;
        using (JobAccess access = JobAccess.Open(shell, parse.GetValue(Store), mayCreate))
        {
            reply = answer(access);
        }

        return Front.Show(reply, parse.GetValue(Json), shell);
    }

    /// <summary>Answers a question about one job.</summary>
    internal int OnJob(ParseResult parse, Shell shell, Func<JobAccess, JobPick.Picked, Reply> answer) =>
        OnStore(parse, shell, mayCreate: false, access => access.Pick(parse.GetValue(Job)) switch
        {
            JobPick.Picked picked => answer(access, picked),
            JobPick.Refused refused => new Reply.Misused(refused.Reason),
            _ => throw new InvalidOperationException("unknown kind of pick"),
        });

    /// <summary>Records one event in one job.</summary>
    internal int Record(ParseResult parse, Shell shell, Func<JobState, EventWish> wish) =>
        OnJob(parse, shell, (access, picked) => wish(picked.State) switch
        {
            EventWish.Wanted wanted => access.Record(picked, wanted.What),
            EventWish.Refused refused => new Reply.Misused(refused.Reason),
            _ => throw new InvalidOperationException("unknown kind of wish"),
        });
}
