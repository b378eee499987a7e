using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

public sealed partial class Journals
{
    private string? _folderOfCopy;

    /// <summary>The journal file.</summary>
    public string Path { get; private init; } = "";

    /// <summary>Why nothing can be written, in a sentence; null when it can.</summary>
    public string? ReadOnlyBecause { get; private init; }

    /// <summary>
    /// Opens the journals in a file; when it is damaged or cannot be written, what can be read of it, for reading only. The file itself is then left
    /// exactly as it is: a copy of it is looked at.
    /// </summary>
    /// <exception cref="StoreUnusableException">Nothing of it can be read; the message says why.</exception>
    public static Journals OpenOrRead(string path, TimeProvider? clock = null)
    {
        try
        {
            return Open(path, clock);
        }
        catch (StoreUnusableException e) when (e.Trouble is StoreTrouble.Damaged or StoreTrouble.NotWritable && File.Exists(path))
        {
            return ReadOnly(System.IO.Path.GetFullPath(path), e, clock ?? TimeProvider.System);
        }
    }

    private static Journals ReadOnly(string path, StoreUnusableException why, TimeProvider clock)
    {
        var folder = Directory.CreateTempSubdirectory("plumbmark-reading-").FullName;
        try
        {
            var copy = System.IO.Path.Combine(folder, "copy.db");
            CopyWithLog(path, copy);
            var (file, sentence) =
                why.Trouble == StoreTrouble.Damaged
                    ? Saved(path, copy, System.IO.Path.Combine(folder, "saved.db"), why)
                    : (copy, $"{why.Message} It is open for reading only; nothing can be entered.");
            return new(JournalFile.Open(file, Migrations.BuiltIn), clock)
            {
                Path = path,
                ReadOnlyBecause = sentence,
                _folderOfCopy = folder,
            };
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Directory.Delete(folder, recursive: true);
            throw new StoreUnusableException(why.Message, e, why.Trouble);
        }
        catch
        {
            Directory.Delete(folder, recursive: true);
            throw;
        }
    }

    private static (string File, string Sentence) Saved(string path, string copy, string into, StoreUnusableException why)
    {
        var saved = Salvage.Into(copy, into);
        var copies = DailyCopies.Of(path) is [var newest, ..] ? $" The newest daily copy is \"{newest.Path}\"." : "";
        if (saved.Cars == 0)
        {
            throw new StoreUnusableException($"{why.Message} Nothing of it can be read.{copies}", why, StoreTrouble.Damaged);
        }

        return (into, $"The journal \"{path}\" is damaged. {saved.Sentence} It is open for reading only and has not been changed.{copies}");
    }

    private static void CopyWithLog(string from, string to)
    {
        foreach (var ending in (string[])["", "-wal", "-journal"])
        {
            if (File.Exists(from + ending))
            {
                File.Copy(from + ending, to + ending);
            }
        }
    }

    /// <summary>How much has been entered: entries and pictures. It never shrinks.</summary>
    internal long Size() => Do(() => (long)_connection.One("SELECT (SELECT count(*) FROM entry) + (SELECT count(*) FROM photo)")!);

    /// <summary>Reads the whole file, on a connection of its own so that nobody waits.</summary>
    internal void RefuseDamaged()
    {
        try
        {
            using var connection = new SqliteConnection($"Data Source={Path};Mode=ReadOnly;Pooling=False");
            connection.Open();
            JournalFile.RefuseDamaged(connection);
        }
        catch (SqliteException e)
        {
            throw JournalFile.Told(Path, e);
        }
    }

    /// <summary>Writes a copy that has been read through.</summary>
    internal void CopyTo(string path) =>
        Do(() =>
        {
            CheckedCopy.Write(_connection, path);
            return true;
        });
}
