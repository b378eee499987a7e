using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Testing.Fuzzing;

namespace Plumbmark.Store.Tests.Durability;

/// <summary>Backups as a broken stick or a spiteful hand would give them, brought into a journal that must not suffer.</summary>
internal sealed class BrokenBackups : IDisposable
{
    private const int MostCars = 30; // then a fresh journal, so that each input costs the same

    private readonly string _folder = Directory.CreateTempSubdirectory("plumbmark-backups-").FullName;
    private readonly byte[] _mine;
    private Journals _journals;
    private int _files;

    public BrokenBackups()
    {
        _journals = Fresh();
        _mine = _journals.Backup();
        Subject = new FuzzSubject(
            "backup",
            [_mine, Small(), Small(photo: true)],
            ["car", "entry", "photo", "CREATE TABLE", "SQLite format 3", "WAL"],
            Try
        );
    }

    /// <summary>Brought in whole, or refused in a sentence with nothing changed.</summary>
    public FuzzSubject Subject { get; }

    private (bool, string?) Try(byte[] backup)
    {
        var before = State();
        try
        {
            _ = _journals.Restore(backup);
        }
        catch (StoreUnusableException e)
        {
            return (false, FuzzSubjects.NoSentence(e.Message) ?? (State() == before ? null : "refused, and the journal is changed"));
        }

        var after = State();
        var wrong = after.Entries < before.Entries || after.Cars < before.Cars ? "something is gone" : null;
        if (after.Cars > MostCars)
        {
            _journals.Dispose();
            _journals = Fresh();
        }

        return (true, wrong);
    }

    private (int Cars, int Entries) State()
    {
        var cars = _journals.Cars();
        return (cars.Count, cars.Sum(c => c.Entries.Count));
    }

    private Journals Fresh()
    {
        var journals = Journals.Open(Path.Combine(_folder, $"{_files++}.db"));
        journals.Add(CarFile.Named("Mine", LengthUnit.Inch));
        return journals;
    }

    private byte[] Small(bool photo = false)
    {
        using var other = Journals.Open(Path.Combine(_folder, $"{_files++}.db"));
        var car = other.Add(DemoCar.File() with { Press = [], Road = null, Book = BookSection.Empty });
        if (photo)
        {
            other.KeepPhoto(car.Id, "image/jpeg", [0xFF, 0xD8, 1, 2, 3]);
        }

        return other.Backup();
    }

    public void Dispose()
    {
        _journals.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}
