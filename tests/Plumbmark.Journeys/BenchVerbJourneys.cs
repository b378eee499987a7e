using System.Text.Json;

namespace Plumbmark.Journeys;

/// <summary><c>plumbmark bench</c> as it is run: exit codes, JSON, and refusals.</summary>
public sealed class BenchVerbJourneys : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("plumbmark-bench-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("bench")]
    [InlineData("bench-fit")]
    public async Task Demo_IsOut_AndJsonSaysWhichPart(string verb)
    {
        await Write("car.json", (await AppProcess.Run(_folder, "demo")).Results);
        var (code, results, _) = await AppProcess.Run(_folder, verb, "car.json", "--json");
        Assert.Equal(10, code);
        using var json = JsonDocument.Parse(results);
        Assert.Equal("out", json.RootElement.GetProperty("overall").GetProperty("verdict").GetString());
        var lever = json.RootElement.GetProperty("parts").EnumerateArray().Single(p => p.GetProperty("id").GetString() == "lever.L");
        Assert.Equal("replace", lever.GetProperty("disposition").GetString());
        Assert.Equal("true", lever.GetProperty("verdict").GetString());
        var variant = lever.GetProperty("variant");
        Assert.Equal("lever-early", variant.GetProperty("recognised").GetString());
        Assert.False(variant.GetProperty("rightForThisCar").GetBoolean());
        Assert.Equal("pad-height", variant.GetProperty("decidedBy").GetString());
        var probabilities = variant.GetProperty("probabilities").EnumerateArray().Sum(p => p.GetProperty("probability").GetDouble());
        Assert.Equal(1, probabilities + variant.GetProperty("noneOrBent").GetDouble(), 1e-6);
        Assert.Equal(36.0172, lever.GetProperty("dimensions")[0].GetProperty("value").GetDouble(), 1e-6);
    }

    [Fact]
    public async Task ForAPerson_TheSameInWords()
    {
        await Write("car.json", (await AppProcess.Run(_folder, "demo")).Results);
        var (code, results, remarks) = await AppProcess.Run(_folder, "bench", "car.json");
        Assert.Equal(10, code);
        Assert.Contains("It is not bent: it is the early lever", results, StringComparison.Ordinal);
        Assert.Contains("It does not say that a part is safe", results, StringComparison.Ordinal);
        Assert.Empty(remarks);
    }

    [Fact]
    public async Task NothingOnTheBench_CannotTell_AndABrokenFileIsRefused()
    {
        await Write("empty.json", """{ "format": "plumbmark-car", "version": 1, "units": "in" }""");
        Assert.Equal(20, (await AppProcess.Run(_folder, "bench", "empty.json")).Code);
        await Write(
            "broken.json",
            """{ "format": "plumbmark-car", "version": 1, "units": "in", "parts": { "items": [ { "id": "p", "kind": "lever" } ] } }"""
        );
        var (code, _, remarks) = await AppProcess.Run(_folder, "bench", "broken.json");
        Assert.Equal(2, code);
        Assert.Contains("parts.items[0].kind", remarks, StringComparison.Ordinal);
        Assert.Contains("steering-lever", remarks, StringComparison.Ordinal);
    }

    private Task Write(string name, string text) => File.WriteAllTextAsync(Path.Combine(_folder, name), text);
}
