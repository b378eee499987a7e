using Plumbmark.Inspection.Car;
using Plumbmark.Reliability.Campaigns;
using Plumbmark.Reliability.Disk;
using Plumbmark.Testing;

namespace Plumbmark.Store.Tests.Durability;

/// <summary>A file of each earlier schema opens, holds what went in, and was copied first.</summary>
[Collection(nameof(FaultyDisk))]
public sealed class UpgradeFaults
{
    public static TheoryData<int> Schemas => [.. Enumerable.Range(1, Migrations.BuiltIn.Count - 1)];

    [Theory]
    [MemberData(nameof(Schemas))]
    public void AnEarlierFile_Opens_AndAsItWasIsKeptBesideIt(int schema)
    {
        using var folder = new TemporaryFolder();
        File.Copy(Fixture(schema, "journal"), folder.Journal);
        var before = CarFileReader
            .Read(File.ReadAllBytes(Fixture(schema, "json")))
            .Match(CarFileWriter.Write, faults => throw new InvalidOperationException(faults[0].ToString()));
        using (var journals = Journals.Open(folder.Journal))
        {
            Assert.Equal(before, CarFileWriter.Write(Assert.Single(journals.Cars()).File));
        }

        var copy = $"{folder.Journal}.before-schema-{schema + 1}";
        Assert.True(File.Exists(copy));
        using var asItWas = JournalFile.Open(copy, [.. Migrations.BuiltIn.Take(schema)]);
        Assert.Equal(schema, Migrations.VersionOf(asItWas));
        Assert.Equal((long)CarFileReaderCount(folder), asItWas.One("SELECT count(*) FROM entry"));
    }

    [Theory]
    [InlineData(DiskFault.Fails)]
    [InlineData(DiskFault.FullFromHere)]
    [InlineData(DiskFault.PowerCut)]
    public void AnUpgrade_WithAFaultAtAnyStep_LeavesOneOrTheOther(DiskFault fault)
    {
        var outcome = Upgrades.Run(Fixture(1, "journal"), fault, seed: 5);
        Assert.Empty(outcome.Findings);
        Assert.True(outcome.Injected > 20, $"Only {outcome.Injected} faults struck.");
    }

    [Fact]
    public void ACopyThatWasCutShort_IsMadeAgain()
    {
        using var folder = new TemporaryFolder();
        File.Copy(Fixture(1, "journal"), folder.Journal);
        File.WriteAllText($"{folder.Journal}.before-schema-2.part", "half a copy");
        Journals.Open(folder.Journal).Dispose();
        Assert.True(File.Exists($"{folder.Journal}.before-schema-2"));
        Assert.False(File.Exists($"{folder.Journal}.before-schema-2.part"));
    }

    private static int CarFileReaderCount(TemporaryFolder folder)
    {
        using var journals = Journals.Open(folder.Journal);
        return journals.Car(1)!.Entries.Count;
    }

    private static string Fixture(int schema, string ending) =>
        Repository.PathTo("tests", "Plumbmark.Store.Tests", "Fixtures", $"schema-{schema}.{ending}");
}
