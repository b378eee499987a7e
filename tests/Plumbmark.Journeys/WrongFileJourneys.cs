using System.Text.Json;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Journeys;

/// <summary>Files that are wrong in every way people and disks manage: <c>check</c> tells each fault with its place, ends with 2, and leaves the store alone.</summary>
public sealed class WrongFileJourneys : IDisposable
{
    private const string Right = """
        { "format": "plumbmark-car", "version": 1, "units": "in",
          "frame": { "points": [
            { "id": "A.L", "mirror": "A.R", "sketch": [60, 12, 0] },
            { "id": "A.R", "mirror": "A.L", "sketch": [60, -12, 0] },
            { "id": "B.L", "mirror": "B.R", "sketch": [0, 12, 0] },
            { "id": "B.R", "mirror": "B.L", "sketch": [0, -12, 0] } ] },
          "readings": [
            { "id": "r1", "kind": "plan", "from": "A.L", "to": "A.R", "value": "24" },
            { "id": "r2", "kind": "plan", "from": "B.L", "to": "B.R", "value": "24" },
            { "id": "r3", "kind": "plan", "from": "A.L", "to": "B.L", "value": "60" } ] }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("plumbmark wrong ").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    public static TheoryData<string, string, string[]> WrongFiles =>
        new()
        {
            { "truncated", Right[..300], ["line 6"] },
            { "wrong type", Right.Replace("\"24\"", "true", StringComparison.Ordinal), ["readings[0].value|8", "readings[1].value|9"] },
            { "unknown field", Right.Replace("\"units\"", "\"colour\": 3, \"units\"", StringComparison.Ordinal), ["colour|1"] },
            { "NaN", Right.Replace("\"60\"", "NaN", StringComparison.Ordinal), ["line 10"] },
            {
                "duplicate ids, one beside a faulty value",
                Right.Replace("\"r3\"", "\"r1\"", StringComparison.Ordinal).Replace("\"60\"", "\"5/0\"", StringComparison.Ordinal),
                ["readings[2]|10", "readings[2].value|10"]
            },
            {
                "readings to missing points",
                Right
                    .Replace("\"to\": \"B.R\"", "\"to\": \"Z.R\"", StringComparison.Ordinal)
                    .Replace("\"to\": \"B.L\"", "\"to\": \"Y\"", StringComparison.Ordinal),
                ["readings[1]|9", "readings[2]|10"]
            },
            {
                "lengths in two pieces",
                Right.Replace(
                    "\"from\": \"A.L\", \"to\": \"B.L\", \"value\": \"60\"",
                    "\"from\": \"B.R\", \"to\": \"B.L\", \"value\": \"24\"",
                    StringComparison.Ordinal
                ),
                ["readings[1]|9"]
            },
        };

    [Theory]
    [MemberData(nameof(WrongFiles))]
    public async Task Check_OfAWrongFile_TellsEveryFaultWithItsPlace(string what, string text, string[] places)
    {
        await Write("wrong.json", System.Text.Encoding.UTF8.GetBytes(text));
        var (code, results, remarks) = await AppProcess.Run(_folder, "check", "wrong.json", "--json");
        Assert.True(code == 2, $"{what}: {code} {remarks}");
        using var json = JsonDocument.Parse(results);
        var faults = json.RootElement.GetProperty("refused").EnumerateArray().ToList();
        Assert.Equal(places.Length, faults.Count);
        foreach (var place in places)
        {
            var (path, line) = place.Split('|') is [var p, var l] ? (p, l) : ("", place["line ".Length..]);
            var fault = faults.Find(f => f.GetProperty("path").GetString() == path && f.GetProperty("line").GetInt32().ToString() == line);
            Assert.True(fault.ValueKind == JsonValueKind.Object, $"{what}: no fault at {place} in {results}");
            Assert.NotEmpty(fault.GetProperty("sentence").GetString()!);
            Assert.Contains($"line {line}", remarks, StringComparison.Ordinal);
            Assert.Contains(fault.GetProperty("sentence").GetString()!, remarks, StringComparison.Ordinal);
        }

        // Nothing but the file itself is there afterwards.
        Assert.Equal(["wrong.json"], Directory.EnumerateFileSystemEntries(_folder).Select(Path.GetFileName));
        var (plain, onScreen, told) = await AppProcess.Run(_folder, "check", "wrong.json");
        Assert.Equal((2, ""), (plain, onScreen));
        Assert.Contains($"{places.Length} fault", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_OfTenMegabytesOfJunk_IsRefused()
    {
        var junk = new byte[10 * 1024 * 1024];
        new Random(5).NextBytes(junk);
        await Write("junk.json", junk);
        var (code, results, remarks) = await AppProcess.Run(_folder, "check", "junk.json");
        Assert.Equal((2, ""), (code, results));
        Assert.Contains("8 MB", remarks, StringComparison.Ordinal);
        Assert.InRange(remarks.Length, 1, 2000);
    }

    [Fact]
    public async Task AWrongFile_LeavesAStoreByteForByteAsItWas()
    {
        await Write("demo.json", CarFileWriter.Write(DemoCar.File()));
        Assert.Equal(0, (await AppProcess.Run(_folder, "import", "demo.json", "--data", "cars.db")).Code);
        var before = await AppProcess.Run(_folder, "export", "1", "--data", "cars.db");
        var bytes = await File.ReadAllBytesAsync(Path.Combine(_folder, "cars.db"), TestContext.Current.CancellationToken);
        await Write("wrong.json", System.Text.Encoding.UTF8.GetBytes(Right.Replace("\"60\"", "\"5/0\"", StringComparison.Ordinal)));
        Assert.Equal(2, (await AppProcess.Run(_folder, "check", "wrong.json")).Code);
        Assert.Equal(2, (await AppProcess.Run(_folder, "import", "wrong.json", "--data", "cars.db")).Code);
        Assert.Equal(bytes, await File.ReadAllBytesAsync(Path.Combine(_folder, "cars.db"), TestContext.Current.CancellationToken));
        Assert.Equal(before.Results, (await AppProcess.Run(_folder, "export", "1", "--data", "cars.db")).Results);
        Assert.Equal(2, (await AppProcess.Run(_folder, "export", "2", "--data", "cars.db")).Code);
    }

    [Fact]
    public async Task Check_OfAFileThatIsNotThere_SaysSo()
    {
        var (code, results, remarks) = await AppProcess.Run(_folder, "check", "gone.json");
        Assert.Equal((2, ""), (code, results));
        Assert.Contains("There is no file \"gone.json\".", remarks, StringComparison.Ordinal);
    }

    private Task Write(string name, byte[] bytes) =>
        File.WriteAllBytesAsync(Path.Combine(_folder, name), bytes, TestContext.Current.CancellationToken);
}
