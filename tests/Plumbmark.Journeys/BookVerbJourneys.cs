using System.Text.Json;

namespace Plumbmark.Journeys;

/// <summary><c>plumbmark book check</c> as it is run: exit codes, JSON, and refusals.</summary>
public sealed class BookVerbJourneys : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("plumbmark-book-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Demo_BothMisprintsAreTold_InWordsAndInJson()
    {
        await Write("car.json", (await AppProcess.Run(_folder, "demo")).Results);
        var (code, text, _) = await AppProcess.Run(_folder, "book", "check", "car.json");
        Assert.Equal(10, code);
        Assert.Contains("29 printed for 26", text, StringComparison.Ordinal);
        Assert.Contains("51.68 printed for 51.86", text, StringComparison.Ordinal);
        Assert.Contains("pad-height: 1.20 (Dipper workshop book (invented), 2nd edition, page 61)", text, StringComparison.Ordinal);
        var (_, results, _) = await AppProcess.Run(_folder, "book", "check", "car.json", "--json");
        using var json = JsonDocument.Parse(results);
        var findings = json.RootElement.GetProperty("pages")[0].GetProperty("findings").EnumerateArray().ToList();
        Assert.Equal(["chain", "does-not-fit"], findings.Select(f => f.GetProperty("kind").GetString()));
    }

    [Fact]
    public async Task AWrongBookFile_IsRefusedWithEveryPlace_AndAnEmptyOneIsInOrder()
    {
        await Write("wrong.json", "{ \"format\": \"plumbmark-book\", \"version\": 2,\n \"pages\": [ { \"units\": \"ft\" } ] }");
        var (code, _, remarks) = await AppProcess.Run(_folder, "book", "check", "wrong.json");
        Assert.Equal(2, code);
        Assert.Contains("version (line 1, column", remarks, StringComparison.Ordinal);
        Assert.Contains("pages[0].units (line 2, column", remarks, StringComparison.Ordinal);
        Assert.Contains("The field \"id\" is missing", remarks, StringComparison.Ordinal);
        await Write("empty.json", "{ \"format\": \"plumbmark-book\", \"version\": 1 }");
        Assert.Equal(0, (await AppProcess.Run(_folder, "book", "check", "empty.json")).Code);
    }

    private Task Write(string name, string text) => File.WriteAllTextAsync(Path.Combine(_folder, name), text);
}
