using CsCheck;
using Plumbmark.Inspection.Car;
using Plumbmark.Testing;

namespace Plumbmark.Store.Tests;

/// <summary>What holds for every car that can be written in a file.</summary>
public sealed class JournalsLaws
{
    [Fact]
    public void AnyCar_PutInAndTakenOut_IsTheSameFile()
    {
        using var folder = new TemporaryFolder();
        using var journals = Journals.Open(folder.Journal);
        CarFiles.Any.Sample(
            file =>
            {
                var before = CarFileWriter.Write(file);
                return CarFileWriter.Write(journals.Add(file).File).AsSpan().SequenceEqual(before);
            },
            iter: 60,
            threads: 1
        );
        var kept = journals.Cars().Select(c => CarFileWriter.Write(c.File)).ToList();
        using var again = Journals.Open(folder.Journal);
        Assert.Equal(kept, again.Cars().Select(c => CarFileWriter.Write(c.File)));
    }
}
