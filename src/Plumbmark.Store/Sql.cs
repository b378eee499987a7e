using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

/// <summary>A statement with its values, run on a connection.</summary>
internal static class Sql
{
    /// <summary>Runs a statement and gives the number of rows it changed.</summary>
    public static int Run(this SqliteConnection connection, string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        using var command = Command(connection, sql, values);
        return command.ExecuteNonQuery();
    }

    /// <summary>The first value of the first row; null when there is no row.</summary>
    public static object? One(this SqliteConnection connection, string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        using var command = Command(connection, sql, values);
        return command.ExecuteScalar() is { } value and not DBNull ? value : null;
    }

    /// <summary>Every row.</summary>
    public static List<T> All<T>(
        this SqliteConnection connection,
        string sql,
        Func<SqliteDataReader, T> row,
        params ReadOnlySpan<(string Name, object? Value)> values
    )
    {
        using var command = Command(connection, sql, values);
        using var reader = command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read())
        {
            rows.Add(row(reader));
        }

        return rows;
    }

    /// <summary>Does something with every row, up to the first that cannot be read.</summary>
    public static void Each(
        this SqliteConnection connection,
        string sql,
        Action<SqliteDataReader> row,
        params ReadOnlySpan<(string Name, object? Value)> values
    )
    {
        using var command = Command(connection, sql, values);
        using var reader = command.ExecuteReader();
        while (reader.Read())
        {
            row(reader);
        }
    }

    private static SqliteCommand Command(SqliteConnection connection, string sql, ReadOnlySpan<(string Name, object? Value)> values)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        foreach (var (name, value) in values)
        {
            command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        }

        return command;
    }
}
