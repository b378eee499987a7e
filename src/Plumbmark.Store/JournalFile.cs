using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

/// <summary>Opens the one file that holds everything, and refuses in words what is not a journal of this program.</summary>
internal static class JournalFile
{
    private const int SqliteNotADatabase = 26;
    private const int SqliteDamaged = 11;

    /// <summary>Reading a file of this size through takes a few tens of milliseconds; a larger one is read through before its daily copy is made.</summary>
    private const long LargestReadThroughBytes = 4 * 1024 * 1024;

    /// <summary>An open connection to a file of the newest schema; the file and its folder are made when missing.</summary>
    /// <exception cref="StoreUnusableException">The file cannot be used as it is.</exception>
    public static SqliteConnection Open(string path, IReadOnlyList<string> steps)
    {
        var full = Path.GetFullPath(path);
        SqliteConnection? connection = null;
        try
        {
            if (Path.GetDirectoryName(full) is { Length: > 0 } folder)
            {
                Directory.CreateDirectory(folder);
            }

            JournalHeader.RefuseWhatIsNotOurs(full, steps.Count);
            connection = Connect(full);
            Pragmas.Apply(connection);
            Pragmas.UseWriteAheadLog(connection);
            if (new FileInfo(full).Length <= LargestReadThroughBytes)
            {
                RefuseDamaged(connection);
            }

            Migrations.Run(connection, steps);
            return connection;
        }
        catch (SqliteException e)
        {
            connection?.Dispose();
            throw Told(full, e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            connection?.Dispose();
            throw new StoreUnusableException($"The journal \"{full}\" cannot be opened: {e.Message}", e, StoreTrouble.NotWritable);
        }
        catch
        {
            connection?.Dispose();
            throw;
        }
    }

    /// <summary>What SQLite said, in a sentence. Its result codes: sqlite.org/rescode.html.</summary>
    public static StoreUnusableException Told(string path, SqliteException e)
    {
        var (trouble, sentence) = e.SqliteErrorCode switch
        {
            5 or 6 => (
                StoreTrouble.Busy,
                $"The journal \"{path}\" is busy: another program has been writing to it for too long. Nothing was changed; try again."
            ),
            8 => (StoreTrouble.NotWritable, $"The journal \"{path}\" cannot be written: the file or its folder is read-only."),
            10 => (StoreTrouble.Other, $"The journal \"{path}\" cannot be read or written: {e.Message}"),
            SqliteDamaged => (StoreTrouble.Damaged, DamagedSentence(path)),
            13 => (
                StoreTrouble.Full,
                $"The disk is full: nothing more can be written to the journal \"{path}\". What was accepted before is kept."
            ),
            14 => (
                StoreTrouble.NotWritable,
                $"The journal \"{path}\" cannot be opened: there is no right to read and write it there, or it is a folder."
            ),
            SqliteNotADatabase => (StoreTrouble.Damaged, $"The file \"{path}\" is not a Plumbmark journal. It has not been touched."),
            _ => (StoreTrouble.Other, $"The journal \"{path}\" cannot be used: {e.Message}"),
        };
        return new StoreUnusableException(sentence, e, trouble);
    }

    /// <summary>A connection without any settings.</summary>
    public static SqliteConnection Connect(string path)
    {
        var text = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = SqliteOpenMode.ReadWriteCreate,
            Pooling = false, // one connection lives as long as the shed; a pool would keep the file open after it
        };
        var connection = new SqliteConnection(text.ToString());
        connection.Open();
        return connection;
    }

    /// <summary>Reads the whole file and refuses it when any of it is not as SQLite wrote it.</summary>
    /// <exception cref="StoreUnusableException">It is damaged.</exception>
    public static void RefuseDamaged(SqliteConnection connection)
    {
        // Not quick_check: that does not see that rows stand in another row's place, as after two pages were exchanged.
        if (connection.One("PRAGMA integrity_check(1)") is not "ok")
        {
            throw new StoreUnusableException(DamagedSentence(connection.DataSource), StoreTrouble.Damaged);
        }
    }

    /// <summary>That a journal is damaged, in words.</summary>
    public static string DamagedSentence(string path) =>
        $"The journal \"{path}\" is damaged. It has not been changed; keep a copy of it before anything else.";
}
