using Plumbmark.Inspection.Demo;
using Plumbmark.Store;

namespace Plumbmark.Reliability.Campaigns;

/// <summary>A closed journal file is damaged in one of several ways and opened: what is shown must have been there, and the person must be told.</summary>
public static class Damage
{
    /// <summary>The ways.</summary>
    public static IReadOnlyList<string> Ways { get; } =
    ["a page overwritten", "a page of zeros", "cut short", "one bit turned", "pages exchanged"];

    /// <summary>What came of one way.</summary>
    /// <param name="Way">Which.</param>
    /// <param name="Files">Files damaged.</param>
    /// <param name="Unnoticed">Opened as if nothing were wrong, with every entry as it was (damage in unused room).</param>
    /// <param name="Changed">Opened as if nothing were wrong, with something else in them (no checksum can tell).</param>
    /// <param name="ReadOnly">Opened for reading only, with what was saved.</param>
    /// <param name="EntriesSaved">Share of the entries saved in those, from 0 to 1.</param>
    /// <param name="Refused">Refused in words.</param>
    /// <param name="Findings">Anything else.</param>
    public sealed record Outcome(
        string Way,
        int Files,
        int Unnoticed,
        int Changed,
        int ReadOnly,
        double EntriesSaved,
        int Refused,
        IReadOnlyList<string> Findings
    );

    /// <summary>Damages that many files in one way.</summary>
    public static Outcome Run(string way, int files, int seed)
    {
        using var folder = new Folder();
        var whole = Whole(folder, out var entries);
        var (unnoticed, changed, readOnly, refused, saved) = (0, 0, 0, 0, 0.0);
        var findings = new List<string>();
        for (var i = 0; i < files; i++)
        {
            using var at = new Folder();
            File.WriteAllBytes(at.Journal, Damaged(whole, way, new Random(seed + i)));
            try
            {
                using var journals = Journals.OpenOrRead(at.Journal);
                var kept = EntriesOf(journals);
                var strange = kept.Except(entries).Count();
                if (journals.ReadOnlyBecause is not null)
                {
                    readOnly++;
                    saved += (double)kept.Count / entries.Count;
                }
                else if (strange == 0 && kept.Count == entries.Count)
                {
                    unnoticed++;
                }
                else
                {
                    changed++;
                }

                if (strange > 0 && way != "one bit turned")
                {
                    findings.Add($"{way}, seed {seed + i}: {strange} entries that never were");
                }
            }
            catch (StoreUnusableException)
            {
                refused++;
            }
            catch (Exception e)
            {
                findings.Add($"{way}, seed {seed + i}: {e}");
            }
        }

        return new Outcome(way, files, unnoticed, changed, readOnly, readOnly == 0 ? 0 : saved / readOnly, refused, findings);
    }

    private static byte[] Whole(Folder folder, out HashSet<string> entries)
    {
        using (var journals = Journals.Open(folder.Journal))
        {
            var random = new Random(1);
            for (var i = 0; i < 4; i++)
            {
                var car = journals.Add(DemoCar.File()).Id;
                var picture = new byte[15_000];
                random.NextBytes(picture);
                journals.KeepPhoto(car, "image/jpeg", picture);
            }

            entries = EntriesOf(journals);
        }

        return File.ReadAllBytes(folder.Journal);
    }

    private static HashSet<string> EntriesOf(Journals journals) =>
        [.. journals.Cars().SelectMany(c => c.Entries.Select(e => $"{c.Id} {e.Sequence} {e.Entry.Id} {e.Entry.Act}"))];

    private static byte[] Damaged(byte[] whole, string way, Random random)
    {
        const int Page = 4096;
        var bytes = (byte[])whole.Clone();
        var pages = bytes.Length / Page;
        var page = random.Next(pages) * Page;
        switch (way)
        {
            case "a page overwritten":
                random.NextBytes(bytes.AsSpan(page, Page));
                return bytes;
            case "a page of zeros":
                bytes.AsSpan(page, Page).Clear();
                return bytes;
            case "cut short":
                return bytes[..random.Next(1, bytes.Length)];
            case "one bit turned":
                bytes[random.Next(bytes.Length)] ^= (byte)(1 << random.Next(8));
                return bytes;
            default:
                var other = random.Next(pages) * Page;
                whole.AsSpan(page, Page).CopyTo(bytes.AsSpan(other));
                whole.AsSpan(other, Page).CopyTo(bytes.AsSpan(page));
                return bytes;
        }
    }
}
