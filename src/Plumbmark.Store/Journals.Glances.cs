using Microsoft.Data.Sqlite;

namespace Plumbmark.Store;

public sealed partial class Journals
{
    private const string Put = """
        INSERT INTO glance (car, sequence, name, serial, points, readings) VALUES ($car, $sequence, $name, $serial, $points, $readings)
        ON CONFLICT (car) DO UPDATE SET sequence = $sequence, name = $name, serial = $serial, points = $points, readings = $readings,
            verdict = CASE WHEN sequence = $sequence THEN verdict END
        """;

    // A car without a row, or whose journal has gone on without it: from an earlier schema, a restored backup or an earlier version beside this one.
    private const string Behind = """
        SELECT car.id FROM car LEFT JOIN glance ON glance.car = car.id
        WHERE coalesce(glance.sequence, -1) <> coalesce((SELECT max(sequence) FROM entry WHERE entry.car = car.id), 0)
        """;

    private bool _mayBeBehind = true;
    private long _versionCaughtUp;

    /// <summary>A page of the list of cars, in the order they came, and how many there are in all.</summary>
    /// <param name="search">Part of a name or serial number; empty for every car. Case does not matter for A to Z.</param>
    /// <param name="skip">Cars before the page.</param>
    /// <param name="take">The most cars on the page.</param>
    /// <param name="binned">Whether the bin is meant.</param>
    /// <param name="toldBy">The version whose verdicts are believed.</param>
    public (IReadOnlyList<CarGlance> Cars, int Total) Glances(string search, int skip, int take, bool binned = false, string toldBy = "")
    {
        CatchUp();
        var from =
            $"FROM car JOIN glance ON glance.car = car.id WHERE binned_at IS {(binned ? "NOT NULL" : "NULL")} "
            + "AND ($search = '' OR instr(lower(name), $search) OR instr(lower(coalesce(serial, '')), $search))";
        var sought = ("$search", (object?)search.ToLowerInvariant());
        return Do(() =>
            (
                (IReadOnlyList<CarGlance>)
                    _connection.All(
                        $"SELECT car.id, sequence, name, serial, points, readings, CASE WHEN told_by = $by THEN verdict END {from} ORDER BY car.id LIMIT $take OFFSET $skip",
                        Glance,
                        sought,
                        ("$take", take),
                        ("$skip", skip),
                        ("$by", toldBy)
                    ),
                (int)(long)_connection.One($"SELECT count(*) {from}", sought)!
            )
        );
    }

    /// <summary>Remembers what the Floor said of a car as it stood, for the list.</summary>
    public void RememberVerdict(long car, long sequence, string verdict, string toldBy)
    {
        if (ReadOnlyBecause is null)
        {
            InTransaction(() =>
                _connection.Run(
                    "UPDATE glance SET verdict = $verdict, told_by = $by WHERE car = $car AND sequence = $sequence",
                    ("$car", car),
                    ("$sequence", sequence),
                    ("$verdict", verdict),
                    ("$by", toldBy)
                )
            );
        }
    }

    /// <summary>Works out the rows that are missing or behind: none as a rule, every car once after an upgrade.</summary>
    private void CatchUp()
    {
        // Nothing new from here or from another process: no need to look at each car.
        var version = Do(() => (long)_connection.One("PRAGMA data_version")!);
        if (!_mayBeBehind && version == _versionCaughtUp)
        {
            return;
        }

        (_mayBeBehind, _versionCaughtUp) = (false, version);
        var behind = Do(() => _connection.All(Behind, r => r.GetInt64(0)));
        foreach (var some in behind.Chunk(500))
        {
            WriteAnyway(() =>
            {
                foreach (var id in some)
                {
                    PutGlance(id, Read);
                }

                return true;
            });
        }
    }

    /// <summary>One car that cannot be understood does not hide the others: it is listed under a name that says so.</summary>
    private void PutGlance(long id, Func<long, OpenCar?> read)
    {
        try
        {
            PutGlance(read(id)!);
        }
        catch (StoreUnusableException)
        {
            _connection.Run(
                Put,
                ("$car", id),
                ("$sequence", _connection.One("SELECT max(sequence) FROM entry WHERE car = $car", ("$car", id)) ?? 0L),
                ("$name", "(a journal that cannot be read)"),
                ("$serial", null),
                ("$points", 0),
                ("$readings", 0)
            );
        }
    }

    private void PutGlance(OpenCar car) =>
        _connection.Run(
            Put,
            ("$car", car.Id),
            ("$sequence", car.Sequence),
            ("$name", car.File.Car.Name),
            ("$serial", car.File.Car.Serial),
            ("$points", car.File.Frame.Points.Count),
            ("$readings", car.File.StandingReadings.Count())
        );

    private static CarGlance Glance(SqliteDataReader r) =>
        new(
            r.GetInt64(0),
            r.GetInt64(1),
            r.GetString(2),
            r.IsDBNull(3) ? null : r.GetString(3),
            r.GetInt32(4),
            r.GetInt32(5),
            r.IsDBNull(6) ? null : r.GetString(6)
        );
}
