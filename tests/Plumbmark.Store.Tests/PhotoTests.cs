using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Store.Tests;

/// <summary>Pictures are kept with their car, once each, and are never changed.</summary>
public sealed class PhotoTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("plumbmark-photos-").FullName;

    private string File => Path.Combine(_folder, "plumbmark.db");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void KeepPhoto_IsThereAfterReopening_AndKeptOnce()
    {
        byte[] picture = [0xFF, 0xD8, 1, 2, 3];
        string name;
        long car;
        using (var journals = Journals.Open(File))
        {
            car = journals.Add(CarFile.Named("Bench", LengthUnit.Inch)).Id;
            name = journals.KeepPhoto(car, "image/jpeg", picture)!;
            Assert.Equal(name, journals.KeepPhoto(car, "image/jpeg", picture));
        }

        using var again = Journals.Open(File);
        var kept = again.Photo(car, name)!;
        Assert.Equal(picture, kept.Bytes);
        Assert.Equal("image/jpeg", kept.ContentType);
    }

    [Fact]
    public void Photo_OfAnotherCarOrName_IsNotThere()
    {
        using var journals = Journals.Open(File);
        var (one, two) = (journals.Add(CarFile.Named("One", LengthUnit.Inch)).Id, journals.Add(CarFile.Named("Two", LengthUnit.Inch)).Id);
        var name = journals.KeepPhoto(one, "image/jpeg", [1, 2, 3])!;
        Assert.Null(journals.Photo(two, name));
        Assert.Null(journals.Photo(one, "../plumbmark.db"));
        Assert.Null(journals.KeepPhoto(99, "image/jpeg", [1]));
    }

    [Fact]
    public void TwelveMegabytes_AreKept()
    {
        using var journals = Journals.Open(File);
        var car = journals.Add(CarFile.Named("One", LengthUnit.Inch)).Id;
        var large = new byte[12 * 1024 * 1024];
        new Random(3).NextBytes(large);
        Assert.Equal(large, journals.Photo(car, journals.KeepPhoto(car, "image/jpeg", large)!)!.Bytes);
    }
}
