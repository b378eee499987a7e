using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

/// <summary>A copy of a journal file as it stands at one moment, whatever another window is doing, that has been read through before it gets its name.</summary>
internal static class CheckedCopy
{
    /// <summary>Writes it. A file of that name is replaced only by a whole and sound one.</summary>
    /// <exception cref="StoreUnusableException">The copy cannot be read back.</exception>
    public static void Write(SqliteConnection connection, string path)
    {
        // A copy that a power cut left half done must not be taken for one: it gets its name last.
        var part = $"{path}.part";
        File.Delete(part);
        connection.Run("VACUUM INTO $part", ("$part", part));
        using (var copy = new SqliteConnection($"Data Source={part};Mode=ReadOnly;Pooling=False"))
        {
            copy.Open();
            if (copy.One("PRAGMA quick_check(1)") is not "ok")
            {
                throw new StoreUnusableException(
                    $"A copy of the journal \"{connection.DataSource}\" could not be read back; the copies made before are kept.",
                    StoreTrouble.Damaged
                );
            }
        }

        File.Move(part, path, overwrite: true);
    }
}
