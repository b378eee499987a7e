using Plumbmark.Inspection.Journal;

namespace Plumbmark.Inspection.Press;

/// <summary>How the journal's acts build up the press jobs of a car.</summary>
internal static class PressJobs
{
    /// <summary>The jobs after an act of the press. An act about a job that is not there changes nothing.</summary>
    public static IReadOnlyList<PressJob> After(IReadOnlyList<PressJob> jobs, Act act) =>
        act switch
        {
            Act.PressJobDescribed a when jobs.Any(j => j.Id == a.Job.Id) => Change(jobs, a.Job.Id, old => old.DescribedAs(a.Job)),
            Act.PressJobDescribed a => [.. jobs, a.Job],
            Act.PressJobRemoved a => [.. jobs.Where(j => j.Id != a.Id)],
            Act.BiteMade a => Change(
                jobs,
                a.Job,
                job => job.Bites.Any(b => b.Id == a.Bite.Id) ? job : job with { Bites = [.. job.Bites, a.Bite] }
            ),
            Act.BiteWithdrawn a => Change(
                jobs,
                a.Job,
                job => job with { Bites = [.. job.Bites.Select(b => b.Id == a.Id ? b with { Withdrawn = a.Reason } : b)] }
            ),
            Act.CrackTested a => Change(
                jobs,
                a.Job,
                job => job.CrackTests.Any(t => t.Id == a.Test.Id) ? job : job with { CrackTests = [.. job.CrackTests, a.Test] }
            ),
            _ => jobs,
        };

    /// <summary>The acts that make an empty record into a job.</summary>
    public static IEnumerable<Act> ActsOf(PressJob job)
    {
        yield return new Act.PressJobDescribed(job with { Bites = [], CrackTests = [] });
        foreach (var bite in job.Bites)
        {
            yield return new Act.BiteMade(job.Id, bite);
        }

        foreach (var test in job.CrackTests)
        {
            yield return new Act.CrackTested(job.Id, test);
        }
    }

    private static PressJob[] Change(IReadOnlyList<PressJob> jobs, string id, Func<PressJob, PressJob> change) =>
        [.. jobs.Select(j => j.Id == id ? change(j) : j)];
}
