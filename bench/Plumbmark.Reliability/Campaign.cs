using Plumbmark.Drawing.Tests.Photos;
using Plumbmark.Reliability.Campaigns;
using Plumbmark.Reliability.Disk;
using Plumbmark.Store.Tests.Durability;
using Plumbmark.Testing.Fuzzing;
using Plumbmark.Web.Tests.Hostile;

namespace Plumbmark.Reliability;

/// <summary>Which campaign is run: the first word of the command line.</summary>
internal static class Campaign
{
    private const int Seed = 20260;

    public static async Task<int> Run(string[] args)
    {
        switch (args.FirstOrDefault())
        {
            case "faults":
                return Faults(Console.Out);
            case "upgrades":
                return UpgradeFiles(args[1..], Console.Out);
            case "damage":
                return DamageFiles(int.Parse(args[1]), Console.Out);
            case "kills":
                return await KillWriters(int.Parse(args[1]), Console.Out);
            case "server-kills":
                return await KillServers(args[1], int.Parse(args[2]), Console.Out);
            case "shed":
                return await Shed(int.Parse(args[1]), args.Length > 2 ? args[2] : null, Console.Out);
            case "day":
                return Day(int.Parse(args[1]), Console.Out);
            case "nasty":
                return Nasty(args[1], Console.Out);
            case "contradictions":
                return Contradict(int.Parse(args[1]), Console.Out);
            case "count":
                Console.Out.WriteLine(KilledWriter.CountKept(args[1], File.ReadLines(args[2])));
                return 0;
            case "fuzz":
                return FuzzNamed(args[1], long.Parse(args[2]), Console.Out);
            case "forms":
                return await Forms(int.Parse(args[1]), Console.Out);
            case "writer":
                KilledWriter.Write(args[1], int.Parse(args[2]), args.Skip(3).Select(Guid.Parse));
                return 0;
            default:
                Console.Error.WriteLine(
                    "Which campaign? faults, upgrades FILE..., damage N, kills N, server-kills PLUMBMARK.DLL N, fuzz SUBJECT|all N, forms N, nasty PLUMBMARK.DLL, contradictions CARS, shed CARS [PLUMBMARK.DLL], day HOURS"
                );
                return 64;
        }
    }

    private static int Faults(TextWriter output)
    {
        const int Times = 10;
        output.WriteLine(
            $"An evening of entry takes {DiskFaults.StepsOfAnEvening()} steps on the disk (open, read, write, shorten, sync, delete);"
        );
        output.WriteLine(
            $"one fault at each step in turn, {Times} times over (seeds {Seed} and up); then the file is opened and compared with what was acknowledged."
        );
        output.WriteLine($"{"fault", -14} {"faults", 8} {"acknowledged", 13} {"evenings told", 14} {"findings", 9}");
        var findings = new List<string>();
        foreach (var fault in Enum.GetValues<DiskFault>())
        {
            var outcomes = Enumerable.Range(0, Times).Select(i => DiskFaults.Run(fault, every: 1, Seed + (1000 * i))).ToList();
            var found = outcomes.SelectMany(o => o.Findings).ToList();
            output.WriteLine(
                $"{fault, -14} {outcomes.Sum(o => o.Injected), 8} {outcomes.Sum(o => o.Acknowledged), 13} {outcomes.Sum(o => o.Told), 14} {found.Count, 9}"
            );
            findings.AddRange(found);
        }

        findings.ForEach(output.WriteLine);
        return findings.Count == 0 ? 0 : 1;
    }

    private static async Task<int> Shed(int cars, string? binary, TextWriter output)
    {
        var outcome = await LongShed.Run(cars, binary, Seed);
        output.WriteLine(
            $"A shed of {outcome.Cars} generated cars (10 to 16 points, 10 to 39 readings), seed {Seed}: {outcome.BytesPerCar / 1024:F1} KB for each."
        );
        output.WriteLine($"{"milliseconds", -26} {"p50", 8} {"p95", 8} {"p99", 8}");
        foreach (var timing in outcome.Timings)
        {
            output.WriteLine(
                $"{timing.What, -26} {timing.Percentile(0.5), 8:F1} {timing.Percentile(0.95), 8:F1} {timing.Percentile(0.99), 8:F1}"
            );
        }

        return 0;
    }

    private static int Day(int hours, TextWriter output)
    {
        output.WriteLine($"Entry without a pause, time compressed: 20 phones, a reading a minute each, new cars every hour, seed {Seed}.");
        output.WriteLine($"{"hour", 5} {"entries", 9} {"memory in use MB", 17}");
        foreach (var hour in LongDay.Run(hours, Seed))
        {
            output.WriteLine($"{hour.Number, 5} {hour.Entries, 9} {hour.HeapMegabytes, 17:F1}");
            output.Flush();
        }

        return 0;
    }

    private static int Contradict(int cars, TextWriter output)
    {
        var findings = Contradictions.Run(cars, Seed);
        output.WriteLine($"{cars} frames with lengths by chance, seed {Seed}: {findings.Count} kinds of finding.");
        foreach (var (error, file) in findings)
        {
            output.WriteLine($"{error}\n{System.Text.Encoding.UTF8.GetString(file)}");
        }

        return findings.Count == 0 ? 0 : 1;
    }

    private static int Nasty(string binary, TextWriter output)
    {
        output.WriteLine(
            $"Degenerate car files ({NastyFiles.All().Count()} networks, 4 whole cars) through the verbs, as text and as JSON:"
        );
        output.WriteLine($"{"verb", -8} {"runs", 6} {"answered", 9} {"refused", 8} {"slowest s", 14} {"findings", 9}");
        var findings = new List<string>();
        foreach (var o in NastyVerbs.Run(binary))
        {
            output.WriteLine($"{o.Verb, -8} {o.Runs, 6} {o.Answered, 9} {o.Refused, 8} {o.SlowestSeconds, 14:F1} {o.Findings.Count, 9}");
            findings.AddRange(o.Findings);
            output.Flush();
        }

        output.WriteLine("answered: ended with true, out or can't tell yet. refused: every fault told with its place.");
        findings.ForEach(output.WriteLine);
        return findings.Count == 0 ? 0 : 1;
    }

    private static int FuzzNamed(string name, long inputs, TextWriter output)
    {
        using var backups = new BrokenBackups();
        IReadOnlyList<FuzzSubject> all = [.. FuzzSubjects.All, BrokenPhotos.Subject, backups.Subject];
        // A backup is a database that is opened, read and searched: a hundred times as dear as a text.
        return Fuzz(name == "all" ? [.. all.Where(s => s != backups.Subject)] : [all.Single(s => s.Name == name)], inputs, output);
    }

    private static async Task<int> Forms(int inputs, TextWriter output)
    {
        var o = await BrokenForms.Run(inputs, Seed);
        var times = o.Milliseconds.Order().ToList();
        double Within(double share) => times[(int)(share * (times.Count - 1))];
        output.WriteLine($"Every form of the demo car, filled in and broken, seed {Seed}; nothing may change when it is refused.");
        output.WriteLine($"  forms there are      {o.Forms, 9:N0}");
        output.WriteLine($"  sent                 {o.Sent, 9:N0}");
        output.WriteLine($"  taken                {o.Taken, 9:N0}");
        output.WriteLine($"  milliseconds         p50 {Within(0.5):F1}  p95 {Within(0.95):F1}  p99 {Within(0.99):F1}  most {times[^1]:F1}");
        output.WriteLine($"  findings             {o.Findings.Count, 9:N0}");
        foreach (var (wrong, form) in o.Findings)
        {
            output.WriteLine($"{wrong}\n  {form}");
        }

        return o.Findings.Count == 0 ? 0 : 1;
    }

    private static int Fuzz(IReadOnlyList<FuzzSubject> subjects, long inputs, TextWriter output)
    {
        output.WriteLine(
            $"Broken input, {inputs:N0} each, seed {Seed}: spliced, cut, doubled, other encodings, huge numbers, NUL, half surrogates, deep nesting."
        );
        output.WriteLine($"{"parser", -20} {"inputs", 12} {"still good", 12} {"slowest ms", 11} {"findings", 9}");
        var findings = 0;
        foreach (var subject in subjects)
        {
            var outcome = FuzzRun.Run(subject, inputs, Seed);
            output.WriteLine(
                $"{outcome.Subject, -20} {outcome.Inputs, 12:N0} {outcome.Accepted, 12:N0} {outcome.SlowestMilliseconds, 11:F1} {outcome.Findings.Count, 9}"
            );
            foreach (var (wrong, input) in outcome.Findings)
            {
                output.WriteLine($"  {wrong}\n    {Convert.ToBase64String(input.AsSpan(0, Math.Min(input.Length, 6000)))}");
            }

            output.Flush();
            findings += outcome.Findings.Count;
        }

        return findings == 0 ? 0 : 1;
    }

    private static int UpgradeFiles(string[] earlier, TextWriter output)
    {
        output.WriteLine($"Upgrades of files of earlier schemas, one fault of the disk at each step in turn, seed {Seed}:");
        output.WriteLine($"{"file", -20} {"fault", -14} {"faults", 8} {"told", 6} {"findings", 9}");
        var findings = new List<string>();
        foreach (var file in earlier)
        {
            foreach (var fault in Enum.GetValues<DiskFault>())
            {
                var outcome = Upgrades.Run(file, fault, Seed);
                output.WriteLine(
                    $"{Path.GetFileName(file), -20} {fault, -14} {outcome.Injected, 8} {outcome.Told, 6} {outcome.Findings.Count, 9}"
                );
                findings.AddRange(outcome.Findings);
            }
        }

        findings.ForEach(output.WriteLine);
        return findings.Count == 0 ? 0 : 1;
    }

    private static int DamageFiles(int files, TextWriter output)
    {
        output.WriteLine($"Closed journal files of four cars with pictures, damaged in five ways, {files} each, seeds {Seed} and up:");
        output.WriteLine(
            $"{"way", -20} {"files", 6} {"as it was", 10} {"changed", 8} {"reading only", 13} {"entries saved", 14} {"refused", 8} {"findings", 9}"
        );
        var findings = new List<string>();
        foreach (var way in Damage.Ways)
        {
            var o = Damage.Run(way, files, Seed);
            output.WriteLine(
                $"{o.Way, -20} {o.Files, 6} {o.Unnoticed, 10} {o.Changed, 8} {o.ReadOnly, 13} {100 * o.EntriesSaved, 12:F1} % {o.Refused, 8} {o.Findings.Count, 9}"
            );
            findings.AddRange(o.Findings);
        }

        output.WriteLine("as it was: opened as usual with every entry (the damage is in unused room or in a picture).");
        output.WriteLine(
            "changed: opened as usual with an entry that reads differently; SQLite keeps no checksums, so a turned bit in a text cannot be seen."
        );
        output.WriteLine("refused: told in a sentence (no journal any more, or a page of a car says so); nothing shown.");
        findings.ForEach(output.WriteLine);
        return findings.Count == 0 ? 0 : 1;
    }

    private static async Task<int> KillWriters(int kills, TextWriter output)
    {
        var outcome = await Kills.Run(kills, Seed);
        output.WriteLine($"Writing processes killed (SIGKILL) at random moments, seed {Seed}:");
        output.WriteLine($"  kills                       {outcome.Kills, 8}");
        output.WriteLine($"  of them while opening       {outcome.InOpening, 8}");
        output.WriteLine($"  of them beside another      {outcome.BesideAnother, 8}");
        output.WriteLine($"  readings acknowledged       {outcome.Acknowledged, 8}");
        output.WriteLine($"  unanswered and sent again   {outcome.SentAgain, 8}");
        output.WriteLine($"  acknowledged and lost       {outcome.Lost, 8}");
        output.WriteLine($"  kept twice                  {outcome.Twice, 8}");
        output.WriteLine($"  other findings              {outcome.Findings.Count, 8}");
        foreach (var finding in outcome.Findings)
        {
            output.WriteLine(finding);
        }

        return outcome.Lost + outcome.Twice + outcome.Findings.Count == 0 ? 0 : 1;
    }

    private static async Task<int> KillServers(string binary, int kills, TextWriter output)
    {
        var outcome = await ServerKills.Run(binary, kills, Seed);
        output.WriteLine($"The program itself killed (SIGKILL) while forms come in, seed {Seed}:");
        output.WriteLine($"  kills                       {outcome.Kills, 8}");
        output.WriteLine($"  readings acknowledged       {outcome.Acknowledged, 8}");
        output.WriteLine($"  unanswered and sent again   {outcome.SentAgain, 8}");
        output.WriteLine($"  acknowledged and lost       {outcome.Lost, 8}");
        output.WriteLine($"  kept twice                  {outcome.Twice, 8}");
        return outcome.Lost + outcome.Twice == 0 ? 0 : 1;
    }
}
