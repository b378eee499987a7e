using Plumbmark.Reliability.Campaigns;
using Plumbmark.Reliability.Disk;

namespace Plumbmark.Reliability;

/// <summary>Which campaign is run: the first word of the command line.</summary>
internal static class Campaign
{
    public static int Run(string[] args)
    {
        switch (args.FirstOrDefault())
        {
            case "faults":
                return Faults(Console.Out);
            default:
                Console.Error.WriteLine("Which campaign? faults");
                return 64;
        }
    }

    private static int Faults(TextWriter output)
    {
        const int Seed = 20260;
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
}
