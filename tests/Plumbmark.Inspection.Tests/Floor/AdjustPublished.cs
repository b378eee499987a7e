using System.Text.Json;
using System.Text.Json.Nodes;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;
using Plumbmark.Testing;

namespace Plumbmark.Inspection.Tests.Floor;

/// <summary>Textbook networks as car files, all the way to the JSON that <c>plumbmark adjust --json</c> prints.</summary>
/// <remarks>Standard deviations in books are a-posteriori: sigma0 times the u printed. Half a unit of the last printed digit is allowed.</remarks>
public class AdjustPublished
{
    private const double Foot = 304.8;

    private static JsonElement Adjust(JsonNode file)
    {
        var car = CarFileReader
            .Read(JsonSerializer.SerializeToUtf8Bytes(file))
            .Match(c => c, f => throw new InvalidOperationException(string.Join("\n", f)));
        return JsonDocument.Parse(AdjustAnswerJson.Bytes(AdjustAnswer.Of(car))).RootElement;
    }

    private static JsonNode File(string name) =>
        JsonNode.Parse(System.IO.File.ReadAllText(Repository.PathTo("reference", "networks", name + ".json")))!;

    private static JsonElement Of(JsonElement answer, string list, string id) =>
        answer.GetProperty(list).EnumerateArray().Single(e => e.GetProperty("id").GetString() == id);

    // Printed in metres (or feet) with so many decimals; we speak millimetres.
    private static void Printed(double printed, int decimals, JsonElement owner, string field, double unit = 1000, double factor = 1)
    {
        var actual = owner.GetProperty(field).GetDouble() * factor / unit;
        Assert.True(Math.Abs(printed - actual) <= 0.51 * Math.Pow(10, -decimals), $"{field}: printed {printed}, found {actual:R}");
    }

    private static void Place(
        JsonElement answer,
        string id,
        double x,
        double y,
        double sx,
        double sy,
        int decimals = 4,
        int sigmaDecimals = 5,
        double unit = 1000
    )
    {
        var sigma0 = answer.GetProperty("adjustment").GetProperty("sigma0").GetDouble();
        var point = Of(answer, "points", id);
        Printed(x, decimals, point, "x", unit);
        Printed(y, decimals, point, "y", unit);
        Printed(sx, sigmaDecimals, point, "ux", unit, sigma0);
        Printed(sy, sigmaDecimals, point, "uy", unit, sigma0);
    }

    private static void Adjusted(JsonElement answer, int redundancy)
    {
        Assert.Equal("adjusted", answer.GetProperty("outcome").GetString());
        Assert.Equal(redundancy, answer.GetProperty("adjustment").GetProperty("redundancy").GetInt32());
    }

    /// <summary>The file as it is, with the free points' sketches taken away, and with points and readings in another order.</summary>
    public static TheoryData<string> Ways => ["as it is", "without sketch", "shuffled", "in inches", "without drops"];

    private static JsonNode Prepared(string name, string way)
    {
        var file = File(name);
        foreach (var point in file["frame"]!["points"]!.AsArray().Where(_ => way == "without sketch"))
        {
            if (point!["fixed"] is null)
            {
                point.AsObject().Remove("sketch");
            }
        }

        if (way == "shuffled")
        {
            var random = new Random(1);
            Shuffle(file["frame"]!["points"]!.AsArray(), random);
            Shuffle(file["readings"]!.AsArray(), random);
        }

        foreach (var point in file["frame"]!["points"]!.AsArray().Where(_ => way == "without drops"))
        {
            point!.AsObject().Remove("dropSigma");
        }

        if (way == "in inches")
        {
            // The unit of bare numbers only: every length here carries its own.
            file["units"] = "in";
        }

        return file;
    }

    private static void Shuffle(JsonArray array, Random random)
    {
        var items = array.OrderBy(_ => random.Next()).ToList();
        array.Clear();
        items.ForEach(array.Add);
    }

    // Strang and Borre, Linear Algebra, Geodesy, and GPS, 1997, example 10.1, p. 345.
    [Theory]
    [MemberData(nameof(Ways))]
    public void StrangBorre10_1(string way)
    {
        var answer = Adjust(Prepared("strang-borre-10-1", way));
        Adjusted(answer, 1);
        Place(answer, "P", 170.7029, 170.7234, 0.03303, 0.02335);
        Printed(3.302932, 6, answer.GetProperty("adjustment"), "sigma0", 1);
        Printed(0.500047, 6, Of(answer, "readings", "1P"), "redundancyNumber", 1);
        Printed(-0.023356, 6, Of(answer, "readings", "1P"), "residual");
    }

    // The same, example 12.4, p. 411.
    [Theory]
    [InlineData("as it is")]
    [InlineData("without drops")]
    public void StrangBorre12_4(string way)
    {
        var answer = Adjust(Prepared("strang-borre-12-4", way));
        Adjusted(answer, 1);
        Place(answer, "P", 170.7123, 170.7185, 0.01079, 0.00682);
        Place(answer, "1", 170.7032, 270.7213, 0.00810, 0.00551);
        Place(answer, "2", 99.9912, 99.9971, 0.00641, 0.00705);
        Place(answer, "3", 241.4333, 99.9830, 0.00640, 0.00705);
        Assert.Equal(
            ["shift x", "shift y", "turn about z"],
            answer.GetProperty("datum").GetProperty("freeMotions").EnumerateArray().Select(m => m.GetString())
        );
    }

    // Ghilani, Adjustment Computations, 5th ed., 2010, examples 14.5 and 19.3, in feet.
    [Theory]
    [InlineData("as it is")]
    [InlineData("shuffled")]
    [InlineData("without drops")]
    public void Ghilani14_5(string way)
    {
        var answer = Adjust(Prepared("ghilani-14-5", way));
        Adjusted(answer, 1);
        Place(answer, "Wisconsin", 2_415_776.9044, 391_043.2945, 0.14879, 0.22061, unit: Foot);
        Place(answer, "Campus", 2_416_892.6955, 387_603.2551, 0.10378, 0.27054, unit: Foot);
        Printed(0.102697, 6, Of(answer, "readings", "BW"), "minimalDetectable", Foot);
        Printed(0.161897, 6, Of(answer, "readings", "BW"), "redundancyNumber", 1);
        Assert.Equal(
            ["BW", "BC", "WC", "WB", "CB"],
            answer
                .GetProperty("tied")
                .EnumerateArray()
                .Single()
                .EnumerateArray()
                .Select(t => t.GetString()!)
                .OrderBy(t => "BW BC WC WB CB".IndexOf(t, StringComparison.Ordinal))
        );
    }

    // Benning, Statistik in Geodaesie, Geoinformation und Bauwesen, 2011, example 8-2 (coordinates recomputed).
    [Theory]
    [InlineData("as it is")]
    [InlineData("shuffled")]
    public void Benning8_2(string way)
    {
        var answer = Adjust(Prepared("benning-8-2", way));
        Adjusted(answer, 1);
        Place(answer, "3", -0.0096, -0.0226, 0.00901, 0.00637);
        Place(answer, "4", 999.9930, 0.0174, 0.00901, 0.00637);
        Printed(0.688242, 6, answer.GetProperty("adjustment"), "sigma0", 1);
        Assert.Contains(
            answer.GetProperty("remarks").EnumerateArray(),
            r => r.GetString()!.Contains("would show, but not in which. There is only one check", StringComparison.Ordinal)
        );

        // An unnoticed error of 13 moves a point by no less than what the reading itself gives way: MDB (1 - r).
        var reading = Of(answer, "readings", "13");
        var moved = reading.GetProperty("hiddenError").GetProperty("moved").GetDouble();
        Assert.InRange(
            moved,
            reading.GetProperty("minimalDetectable").GetDouble() * (1 - reading.GetProperty("redundancyNumber").GetDouble()),
            3 * reading.GetProperty("minimalDetectable").GetDouble()
        );
    }

    // Ghilani 2010, example 12.6, p. 218-220.
    [Theory]
    [MemberData(nameof(Ways))]
    public void Ghilani12_6(string way)
    {
        var answer = Adjust(Prepared("ghilani-12-6", way));
        Adjusted(answer, 3);
        var sigma0 = answer.GetProperty("adjustment").GetProperty("sigma0").GetDouble();
        foreach (var (id, z, sz) in new[] { ("B", 448.1087, 0.00230), ("C", 453.4685, 0.00264), ("D", 444.9436, 0.00176) })
        {
            Printed(z, 4, Of(answer, "points", id), "z");
            Printed(sz, 5, Of(answer, "points", id), "uz", 1000, sigma0);
            Assert.False(Of(answer, "points", id).TryGetProperty("x", out _));
        }
    }

    // Wolf, Ausgleichungsrechnung II, 1979, p. 87. The mirror image below the plane of the four fits as well: the sketch must tell.
    [Theory]
    [InlineData("as it is")]
    [InlineData("shuffled")]
    public void Wolf1979(string way)
    {
        var answer = Adjust(Prepared("wolf-1979", way));
        Adjusted(answer, 1);
        Place(answer, "P", 900.0167, 899.9833, 0.01179, 0.01179);
        Printed(1300.0062, 4, Of(answer, "points", "P"), "z");
        Printed(0.00625, 5, Of(answer, "points", "P"), "uz");
    }

    [Fact]
    public void Wolf1979_SketchedInThePlaneOfTheFour_RisesOutOfIt()
    {
        var file = File("wolf-1979");
        file["frame"]!["points"]!.AsArray().Single(p => p!["id"]!.GetValue<string>() == "P")!["sketch"] = new JsonArray(
            "905 m",
            "895 m",
            "900 m"
        );
        var answer = Adjust(file);
        Adjusted(answer, 1);
        Assert.Equal(400.0062, Math.Abs(Of(answer, "points", "P").GetProperty("z").GetDouble() / 1000 - 900), 1e-3);
    }

    // A place known to a millimetre holds a point as a reading would: half-way between two lengths' worth, by weight. Own computation.
    [Fact]
    public void AFixedPlaceWithItsOwnSigma_EntersLikeAReading()
    {
        var file = JsonNode.Parse(
            """
            { "format": "plumbmark-car", "version": 1, "units": "mm", "car": { "name": "line" },
              "frame": { "points": [
                { "id": "A", "fixed": true, "sketch": [0, 0, 0], "dropSigma": 0 },
                { "id": "B", "fixed": true, "fixedSigma": 2, "sketch": [null, null, 100], "dropSigma": 0 } ] },
              "readings": [ { "id": "r", "kind": "rise", "from": "A", "to": "B", "value": 105, "sigma": 1 } ] }
            """
        )!;
        var point = Of(Adjust(file), "points", "B");

        // (100 / 4 + 105 / 1) / (1/4 + 1) = 104; u = 1 / √(5/4).
        Assert.Equal(104, point.GetProperty("z").GetDouble(), 1e-6);
        Assert.Equal(Math.Sqrt(0.8), point.GetProperty("uz").GetDouble(), 1e-6);

        // What the readings make of the place itself: r = 1 - 0.8 / 4 = 0.8, w = 4 / (2 √0.8). A place without a sigma is no observation.
        var given = point.GetProperty("given").GetProperty("z");
        Assert.Equal(100, given.GetProperty("observed").GetDouble(), 1e-6);
        Assert.Equal(4, given.GetProperty("residual").GetDouble(), 1e-6);
        Assert.Equal(2, given.GetProperty("sigma").GetDouble(), 1e-6);
        Assert.Equal(0.8, given.GetProperty("redundancyNumber").GetDouble(), 1e-6);
        Assert.Equal(4 / (2 * Math.Sqrt(0.8)), given.GetProperty("standardised").GetDouble(), 1e-6);
        Assert.False(Of(Adjust(file), "points", "A").TryGetProperty("given", out _));
    }

    // OSGeoLabBp, tutorials, english/data_processing/level_net.rst.
    [Theory]
    [MemberData(nameof(Ways))]
    public void LevelNetTutorial(string way)
    {
        var answer = Adjust(Prepared("level-net", way));
        Adjusted(answer, 3);
        foreach (var (id, z) in new[] { ("1", 104.2350), ("2", 103.4868), ("3", 102.9588) })
        {
            Printed(z, 4, Of(answer, "points", id), "z");
        }

        Printed(8.217, 3, answer.GetProperty("adjustment"), "weightedSquares", 1);
        Printed(2.6, 1, Of(answer, "readings", "23"), "standardised", 1);
    }

    [Fact]
    public void Demo_WithItsRepeatedDrops_HasAnAnswerForEveryReading()
    {
        var car = Inspection.Demo.DemoCar.File();
        var answer = JsonDocument.Parse(AdjustAnswerJson.Bytes(AdjustAnswer.Of(car))).RootElement;
        var told = answer.GetProperty("readings").EnumerateArray().Select(r => r.GetProperty("id").GetString()).ToHashSet();
        Assert.Contains(car.Readings, r => r is Reading.Drop);
        Assert.All(car.StandingReadings, r => Assert.Contains(r.Id, told));
    }

    [Fact]
    public void ContradictionThatNoSlipExplains_IsToldInWords()
    {
        // Every length to one mark wrong by its own amount: neither one slip nor two, and the mark itself is said to be the point.
        var demo = Inspection.Demo.DemoCar.File();
        var n = 0;
        Reading Spoilt(Reading reading) =>
            reading is Reading.Plan plan && plan.Points.Contains("C.L")
                ? plan with
                {
                    Value = plan.Value + Engine.Lengths.Length.FromMillimetres(n++ % 2 == 0 ? 41 : -37),
                }
                : reading;
        var car = demo with
        {
            Frame = demo.Frame with { Points = [.. demo.Frame.Points.Select(p => p with { DropSigma = Engine.Lengths.Length.Zero })] },
            Readings = [.. demo.Readings.Where(r => r is not Reading.Drop).Select(Spoilt)],
        };
        Assert.True(n > 4);
        var answer = JsonDocument.Parse(AdjustAnswerJson.Bytes(AdjustAnswer.Of(car))).RootElement;
        Assert.Empty(answer.GetProperty("suspects").EnumerateArray());
        Assert.Contains(
            answer.GetProperty("remarks").EnumerateArray(),
            r => r.GetString()!.Contains("times as much as their uncertainties allow", StringComparison.Ordinal)
        );
    }
}
