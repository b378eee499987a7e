using System.Globalization;

namespace Plumbmark.Store;

/// <summary>
/// Copies of the whole journal file that are made by themselves, one for each day on which something was entered, in a folder beside it. Each is a backup file:
/// <c>plumbmark restore</c> brings it back. The newest seven stay, and the first of each of the last six months.
/// </summary>
/// <remarks>
/// A copy's name has its day and the number of entries in it. Entries are only ever added, so that number tells which copy is newer even when the clock was set
/// back.
/// </remarks>
public static class DailyCopies
{
    private const int DaysKept = 7;
    private const int MonthsKept = 6;

    /// <summary>So many entries since today's copy are worth another one: a long day, or a clock that stands still.</summary>
    private const long EntriesWorthACopy = 200;

    private const string Ending = ".backup";

    /// <summary>A copy there is.</summary>
    /// <param name="Path">The file.</param>
    /// <param name="Day">The day in its name, as yyyy-MM-dd.</param>
    /// <param name="Size">Entries and pictures in it.</param>
    public sealed record Copy(string Path, string Day, long Size);

    /// <summary>The folder of a journal file's copies.</summary>
    public static string FolderOf(string journal) =>
        Path.Combine(Path.GetDirectoryName(Path.GetFullPath(journal)) ?? ".", $"{Path.GetFileNameWithoutExtension(journal)}-daily");

    /// <summary>The copies there are, newest first.</summary>
    public static IReadOnlyList<Copy> Of(string journal)
    {
        var folder = FolderOf(journal);
        return Directory.Exists(folder)
            ?
            [
                .. Directory
                    .EnumerateFiles(folder, $"*{Ending}")
                    .Select(Read)
                    .OfType<Copy>()
                    .OrderByDescending(c => c.Size)
                    .ThenByDescending(c => c.Day),
            ]
            : [];
    }

    /// <summary>Makes today's copy when there is something new and none was made today, and lets go of the oldest. The path of the new one; null when none was due.</summary>
    /// <exception cref="StoreUnusableException">The copy could not be made; those from before are kept.</exception>
    public static string? Keep(Journals journals, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(journals);
        if (journals.ReadOnlyBecause is not null)
        {
            return null;
        }

        try
        {
            var copies = Of(journals.Path);
            var today = clock.GetLocalNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            var size = journals.Size();
            var newest = copies.Count == 0 ? 0 : copies[0].Size;
            var isDue = size > newest && (copies.All(c => c.Day != today) || size - newest >= EntriesWorthACopy);
            if (!isDue)
            {
                return null;
            }

            // A damaged journal is not copied over sound copies of it.
            journals.RefuseDamaged();
            var folder = Directory.CreateDirectory(FolderOf(journals.Path)).FullName;
            var path = Path.Combine(folder, $"{today}-{size:D9}{Ending}");
            journals.CopyTo(path);
            LetGo(Of(journals.Path));
            return path;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreUnusableException($"Today's copy of the journal could not be made: {e.Message}", e);
        }
    }

    private static void LetGo(IReadOnlyList<Copy> newestFirst)
    {
        var ofMonths = newestFirst.GroupBy(c => c.Day[..7]).Take(MonthsKept).Select(month => month.Last());
        foreach (var copy in newestFirst.Skip(DaysKept).Except(ofMonths))
        {
            File.Delete(copy.Path);
        }
    }

    private static Copy? Read(string path)
    {
        var name = Path.GetFileNameWithoutExtension(path);
        return
            name.Length > 11
            && DateOnly.TryParseExact(name[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
            && long.TryParse(name.AsSpan(11), NumberStyles.None, CultureInfo.InvariantCulture, out var size)
            ? new Copy(path, name[..10], size)
            : null;
    }
}
