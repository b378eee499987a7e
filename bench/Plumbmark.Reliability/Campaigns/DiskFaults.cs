using Plumbmark.Reliability.Disk;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>An evening of entry with one fault of the disk at one step, for every step and every kind of fault in turn.</summary>
public static class DiskFaults
{
    /// <summary>What came of one kind of fault.</summary>
    /// <param name="Fault">The kind.</param>
    /// <param name="Injected">Evenings with one such fault.</param>
    /// <param name="Acknowledged">Readings acknowledged in all of them together.</param>
    /// <param name="Told">Evenings in which the person was told in a sentence.</param>
    /// <param name="Findings">What was promised and did not hold.</param>
    public sealed record Outcome(DiskFault Fault, int Injected, int Acknowledged, int Told, IReadOnlyList<string> Findings);

    /// <summary>The number of steps of an evening without a fault.</summary>
    public static long StepsOfAnEvening()
    {
        using var folder = new Folder();
        using var disk = new FaultyDisk(DiskFault.Fails, at: 0, seed: 0);
        var evening = new Evening(folder.Journal, seed: 0);
        evening.Spend();
        return disk.Steps;
    }

    /// <summary>Lets one kind of fault strike at each step in turn.</summary>
    /// <param name="fault">The kind.</param>
    /// <param name="every">1 for each step, 7 for each seventh.</param>
    /// <param name="seed">Decides what a power cut leaves of what was not synced.</param>
    public static Outcome Run(DiskFault fault, int every, int seed)
    {
        var (injected, acknowledged, told) = (0, 0, 0);
        var findings = new List<string>();
        for (var at = 1L; ; at += every)
        {
            var (evening, struck, broken) = One(fault, at, seed + (int)at);
            if (!struck)
            {
                return new Outcome(fault, injected, acknowledged, told, findings);
            }

            injected++;
            acknowledged += evening.Acknowledged.Count;
            told += evening.Sentences.Count > 0 ? 1 : 0;
            findings.AddRange(broken.Select(b => $"{fault} at step {at}, seed {seed + at}: {b}"));
        }
    }

    /// <summary>One evening with one fault: what of the promise did not hold.</summary>
    public static IReadOnlyList<string> RunOne(DiskFault fault, long at, int seed) => One(fault, at, seed).Broken;

    private static (Evening Evening, bool Struck, IReadOnlyList<string> Broken) One(DiskFault fault, long at, int seed)
    {
        using var folder = new Folder();
        using var left = new Folder();
        var evening = new Evening(folder.Journal, seed);
        bool struck;
        using (var disk = new FaultyDisk(fault, at, seed))
        {
            evening.Spend();
            struck = disk.HasStruck;
            if (fault is DiskFault.PowerCut or DiskFault.Killed)
            {
                disk.SaveWhatIsLeft(left.Path);
            }
        }

        var file = fault is DiskFault.PowerCut or DiskFault.Killed ? left.Journal : folder.Journal;
        return (evening, struck, [.. evening.Unhandled, .. evening.BrokenIn(file)]);
    }
}
