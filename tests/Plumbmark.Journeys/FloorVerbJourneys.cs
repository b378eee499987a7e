using System.Text.Json;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary><c>check</c> and <c>plan</c> as typed in a terminal: exit codes, and JSON with every field that others rely on.</summary>
public sealed class FloorVerbJourneys : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("plumbmark floor ").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData(Stories.TheInch, 20, "can't tell yet")]
    [InlineData(Stories.OneHorn, 20, "can't tell yet")]
    [InlineData(Stories.EqualDiagonals, 20, "can't tell yet")]
    [InlineData(Stories.EqualDiagonalsWithHeights, 10, "out")]
    [InlineData(Stories.EqualDiagonalsAfter, 0, "true")]
    [InlineData(Stories.BentMount, 10, "out")]
    [InlineData(Stories.BentMountAfter, 0, "true")]
    public async Task Check_EndsWithItsVerdict_OnScreenAndInJson(string story, int expected, string verdict)
    {
        var (code, results, remarks) = await AppProcess.Run(_folder, "check", Stories.PathTo(story), "--json");
        Assert.Equal((expected, ""), (code, remarks));
        using var json = JsonDocument.Parse(results);
        var overall = json.RootElement.GetProperty("overall");
        Assert.Equal(verdict, overall.GetProperty("verdict").GetString());
        var reasons = overall.GetProperty("reasons").EnumerateArray().Select(r => r.GetString()!).ToList();
        Assert.NotEmpty(reasons);
        Assert.Equal(string.Join(' ', reasons), overall.GetProperty("why").GetString());
        foreach (var word in new[] { "residual", "covariance", "RMS", "standardised" })
        {
            Assert.DoesNotContain(word, overall.ToString(), StringComparison.OrdinalIgnoreCase);
        }

        var (again, text, _) = await AppProcess.Run(_folder, "check", Stories.PathTo(story));
        Assert.Equal(expected, again);
        Assert.All(reasons, r => Assert.Contains(r, text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task CheckJson_HasEveryFieldOfTheContract()
    {
        var (_, results, _) = await AppProcess.Run(_folder, "check", Stories.PathTo(Stories.EqualDiagonalsWithHeights), "--json");
        using var json = JsonDocument.Parse(results);
        var root = json.RootElement;
        HasAll(root.GetProperty("adjustment"), "redundancy", "varianceFactor", "chiSquareP");
        HasAll(First("points"), "id", "x", "y", "z", "ux", "uy", "uz");
        HasAll(First("readings"), "id", "residual", "standardised", "redundancyNumber", "minimalDetectable");
        HasAll(First("pairs"), "left", "right", "sideShift", "stagger", "heightDifference", "uSideShift", "uStagger", "uHeightDifference");
        HasAll(First("damage"), "form", "amount", "u", "from");
        HasAll(First("checks"), "id", "kind", "value", "u", "limit", "probabilityWithin", "verdict");
        Assert.Equal(JsonValueKind.Array, root.GetProperty("suspects").ValueKind);
        Assert.Equal(JsonValueKind.Array, root.GetProperty("next").ValueKind);
        var (_, flat, _) = await AppProcess.Run(_folder, "check", Stories.PathTo(Stories.EqualDiagonals), "--json");
        using var without = JsonDocument.Parse(flat);
        HasAll(without.RootElement.GetProperty("blindSpots").EnumerateArray().First(), "form", "smallestSeen", "limit");
        HasAll(without.RootElement.GetProperty("next").EnumerateArray().First(), "kind", "settles");
        Assert.All(without.RootElement.GetProperty("points").EnumerateArray(), p => Assert.False(p.TryGetProperty("z", out _)));
        var (_, inch, _) = await AppProcess.Run(_folder, "check", Stories.PathTo(Stories.TheInch), "--json");
        using var doubted = JsonDocument.Parse(inch);
        var suspect = doubted.RootElement.GetProperty("suspects").EnumerateArray().First();
        HasAll(suspect, "reading", "kind", "size", "odds");
        Assert.Equal(25.4, suspect.GetProperty("size").GetDouble(), 1.5); // observed less believed, mm

        JsonElement First(string list) => root.GetProperty(list).EnumerateArray().First();
        static void HasAll(JsonElement of, params string[] names) => Assert.All(names, n => Assert.True(of.TryGetProperty(n, out _), n));
    }

    [Fact]
    public async Task Plan_IsToldInJsonAndAsATickList_ByTheMinutesGiven()
    {
        var file = Stories.PathTo(Stories.TheInch);
        var (code, results, _) = await AppProcess.Run(_folder, "plan", file, "--json", "--to", "3/32");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(results);
        var usual = json.RootElement.GetProperty("minutes").GetDouble();
        Assert.Equal(25.4 * 3 / 32, json.RootElement.GetProperty("settlesTo").GetDouble(), 1e-6);
        Assert.NotEmpty(json.RootElement.GetProperty("readings").EnumerateArray());

        var (listed, text, _) = await AppProcess.Run(
            _folder,
            "plan",
            file,
            "--to",
            "3/32",
            "--minutes-length",
            "4",
            "--minutes-height",
            "4",
            "--minutes-drop",
            "4"
        );
        Assert.Equal(0, listed);
        Assert.Contains("[ ]", text, StringComparison.Ordinal);
        Assert.Contains("3/32 in", text, StringComparison.Ordinal);
        var (_, slower, _) = await AppProcess.Run(
            _folder,
            "plan",
            file,
            "--json",
            "--to",
            "3/32",
            "--minutes-length",
            "4",
            "--minutes-height",
            "4",
            "--minutes-drop",
            "4"
        );
        using var slow = JsonDocument.Parse(slower);
        Assert.True(slow.RootElement.GetProperty("minutes").GetDouble() > 2 * usual);
    }

    [Theory]
    [InlineData(64, "check")]
    [InlineData(64, "plan")]
    [InlineData(64, "plan", "FILE", "--to", "1/0")]
    [InlineData(64, "plan", "FILE", "--to", "0")]
    [InlineData(64, "plan", "FILE", "--minutes-length", "0")]
    [InlineData(64, "check", "FILE", "--colour")]
    [InlineData(2, "check", "gone.json")]
    [InlineData(2, "plan", "gone.json")]
    public async Task WhatCannotBeDone_IsToldOnRemarksOnly(int expected, params string[] arguments)
    {
        string[] typed = [.. arguments.Select(a => a == "FILE" ? Stories.PathTo(Stories.TheInch) : a)];
        var (code, results, remarks) = await AppProcess.Run(_folder, typed);
        Assert.Equal((expected, ""), (code, results));
        Assert.NotEmpty(remarks.Trim());
    }
}
