using Plumbmark.Store;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>Writers are killed (SIGKILL) at random moments: while they open the file, in the middle of a reading, while another writes to the same file.</summary>
public static class Kills
{
    private const int KillsOnAFile = 40;

    /// <summary>What came of it.</summary>
    public sealed record Outcome(
        int Kills,
        int InOpening,
        int BesideAnother,
        int Acknowledged,
        int SentAgain,
        int Lost,
        int Twice,
        IReadOnlyList<string> Findings
    );

    /// <summary>Kills that many writers.</summary>
    public static async Task<Outcome> Run(int kills, int seed)
    {
        var random = new Random(seed);
        var total = new Outcome(0, 0, 0, 0, 0, 0, 0, []);
        while (total.Kills < kills)
        {
            total = Sum(total, await OnOneFile(Math.Min(KillsOnAFile, kills - total.Kills), random));
        }

        return total;
    }

    private static async Task<Outcome> OnOneFile(int kills, Random random)
    {
        using var folder = new Folder();
        var (done, opening, beside, again) = (0, 0, 0, 0);
        var (acknowledged, pending, findings) = (new List<Guid>(), new List<Guid>(), new List<string>());
        while (done < kills)
        {
            // Each fourth time two at once on the same file, killed one after the other.
            var writers = done % 4 == 3 && done + 2 <= kills ? 2 : 1;
            var after = random.Next(8) switch
            {
                0 => "",
                < 4 => "try",
                _ => "ack",
            };
            var early = after.Length == 0;
            var send = pending;
            again += send.Count;
            var runs = await Task.WhenAll(
                Enumerable
                    .Range(0, writers)
                    .Select(i =>
                        KilledWriter.RunAndKill(
                            folder.Journal,
                            random.Next(),
                            i == 0 ? send : [],
                            after,
                            TimeSpan.FromMilliseconds(random.Next(early ? 250 : 120))
                        )
                    )
                    .ToList()
            );
            (done, opening, beside) = (done + writers, opening + (early ? writers : 0), beside + (writers == 2 ? 2 : 0));
            acknowledged.AddRange(runs.SelectMany(r => r.Acknowledged));
            pending = [.. runs.SelectMany(r => r.Begun).Concat(send).Distinct().Except(acknowledged)];
            findings.AddRange(runs.Select(r => r.Remarks).Where(r => r.Length > 0));
            if (done % 5 == 0)
            {
                Look(folder.Journal, acknowledged, findings); // in between the next writer finds the file as the kill left it
            }
        }

        var (lost, twice) = Look(folder.Journal, acknowledged, findings);
        return new Outcome(done, opening, beside, acknowledged.Distinct().Count(), again, lost, twice, findings);
    }

    private static (int Lost, int Twice) Look(string journal, List<Guid> acknowledged, List<string> findings)
    {
        try
        {
            using var journals = Journals.Open(journal);
            var cars = journals.Cars();
            var kept = cars.SelectMany(c => c.Entries).Select(e => e.Entry.Id).ToList();
            var lost = acknowledged.Except(kept).Count();
            var twice = kept.Count - kept.Distinct().Count() + Math.Max(0, cars.Count - 1);
            if (cars.Any(c => !c.Entries.Select(e => e.Sequence).SequenceEqual(Enumerable.Range(1, c.Entries.Count).Select(i => (long)i))))
            {
                findings.Add("places with gaps");
            }

            return (lost, twice);
        }
        catch (StoreUnusableException e)
        {
            findings.Add(e.Message);
            return (acknowledged.Count, 0);
        }
    }

    private static Outcome Sum(Outcome a, Outcome b) =>
        new(
            a.Kills + b.Kills,
            a.InOpening + b.InOpening,
            a.BesideAnother + b.BesideAnother,
            a.Acknowledged + b.Acknowledged,
            a.SentAgain + b.SentAgain,
            a.Lost + b.Lost,
            a.Twice + b.Twice,
            [.. a.Findings, .. b.Findings]
        );
}
