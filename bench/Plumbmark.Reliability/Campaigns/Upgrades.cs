using Plumbmark.Reliability.Disk;
using Plumbmark.Store;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>A file of an earlier schema is opened while the disk fails at one step; afterwards it must open and hold all its entries.</summary>
public static class Upgrades
{
    /// <summary>What came of one kind of fault.</summary>
    public sealed record Outcome(DiskFault Fault, int Injected, int Told, IReadOnlyList<string> Findings);

    /// <summary>Lets one kind of fault strike at each step of the upgrade in turn.</summary>
    /// <param name="earlier">The file of an earlier schema; it is copied first.</param>
    /// <param name="fault">The kind.</param>
    /// <param name="seed">Decides what a power cut leaves of what was not synced.</param>
    public static Outcome Run(string earlier, DiskFault fault, int seed)
    {
        var entries = EntriesIn(earlier);
        var (injected, told) = (0, 0);
        var findings = new List<string>();
        for (var at = 1L; ; at++)
        {
            using var folder = new Folder();
            using var left = new Folder();
            File.Copy(earlier, folder.Journal);
            bool struck;
            using (var disk = new FaultyDisk(fault, at, seed + (int)at))
            {
                told += Open(folder.Journal, findings) ? 0 : 1;
                struck = disk.HasStruck;
                disk.SaveWhatIsLeft(left.Path);
            }

            if (!struck)
            {
                return new Outcome(fault, injected, told, findings);
            }

            injected++;
            var found = EntriesIn(fault is DiskFault.PowerCut or DiskFault.Killed ? left.Journal : folder.Journal);
            if (found != entries)
            {
                findings.Add($"{fault} at step {at} of an upgrade, seed {seed + at}: {found} entries of {entries}");
            }
        }
    }

    private static bool Open(string journal, List<string> findings)
    {
        try
        {
            Journals.Open(journal).Dispose();
            return true;
        }
        catch (StoreUnusableException)
        {
            return false;
        }
        catch (Exception e)
        {
            findings.Add($"{e.GetType().Name}: {e.Message}");
            return false;
        }
    }

    private static string EntriesIn(string journal)
    {
        using var folder = new Folder();
        try
        {
            foreach (var file in Directory.GetFiles(Path.GetDirectoryName(journal)!, Path.GetFileName(journal) + "*"))
            {
                File.Copy(file, folder.Journal + file[journal.Length..]);
            }

            using var journals = Journals.Open(folder.Journal);
            return string.Join(' ', journals.Cars().Select(c => $"{c.Entries.Count}"));
        }
        catch (StoreUnusableException e)
        {
            return e.Message;
        }
    }
}
