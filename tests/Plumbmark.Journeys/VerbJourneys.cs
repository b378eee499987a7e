using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Journeys;

/// <summary>The verbs of the built program, as typed in a terminal.</summary>
public sealed class VerbJourneys : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("plumbmark verbs ").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Demo_Import_Export_GiveTheSameBytes()
    {
        var (code, demo, remarks) = await AppProcess.Run(_folder, "demo");
        Assert.Equal((0, ""), (code, remarks));
        Assert.Equal(System.Text.Encoding.UTF8.GetString(CarFileWriter.Write(DemoCar.File())), demo);
        await File.WriteAllTextAsync(Path.Combine(_folder, "demo car.json"), demo, TestContext.Current.CancellationToken);

        var (imported, number, _) = await AppProcess.Run(_folder, "import", "demo car.json", "--data", "my cars.db");
        Assert.Equal(0, imported);
        var (exported, _, _) = await AppProcess.Run(_folder, "export", number.Trim(), "-o", "again.json", "--data", "my cars.db");
        Assert.Equal(0, exported);
        Assert.Equal(demo, await File.ReadAllTextAsync(Path.Combine(_folder, "again.json"), TestContext.Current.CancellationToken));
        var (byName, onScreen, _) = await AppProcess.Run(_folder, "export", "Quillorne Dipper (demo)", "--data", "my cars.db");
        Assert.Equal((0, demo), (byName, onScreen));
    }

    [Fact]
    public async Task Import_OfAWrongFile_TellsEveryFault_AndMakesNoJournal()
    {
        await File.WriteAllTextAsync(
            Path.Combine(_folder, "wrong.json"),
            """{ "format": "plumbmark-car", "version": 1, "units": "ells", "colour": "red" }""",
            TestContext.Current.CancellationToken
        );
        var (code, results, remarks) = await AppProcess.Run(_folder, "import", "wrong.json", "--data", "none.db");
        Assert.Equal((2, ""), (code, results));
        Assert.Contains("ells", remarks, StringComparison.Ordinal);
        Assert.Contains("colour", remarks, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_folder, "none.db")));
    }

    [Theory]
    [InlineData(64, "nonsense")]
    [InlineData(64, "export")]
    [InlineData(2, "export", "no such car")]
    [InlineData(2, "import", "no such file.json")]
    [InlineData(2, "serve", "--data", ".")]
    public async Task WhatCannotBeDone_IsToldOnRemarksOnly(int expected, params string[] arguments)
    {
        var (code, results, remarks) = await AppProcess.Run(_folder, arguments);
        Assert.Equal((expected, ""), (code, results));
        Assert.NotEmpty(remarks.Trim());
        Assert.DoesNotContain("   at ", remarks, StringComparison.Ordinal);
    }
}
