using System.Text.Json;
using Plumbmark.Testing;

namespace Plumbmark.Journeys;

/// <summary>Textbook networks through the built program, as a surveyor would type it.</summary>
/// <remarks>Books print a-posteriori standard deviations: sigma0 times the u printed. Half a unit of the last printed digit is allowed.</remarks>
public sealed class AdjustJourneys : IDisposable
{
    private const double Foot = 304.8;

    private readonly string _folder = Directory.CreateTempSubdirectory("plumbmark adjust ").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private async Task<JsonElement> Adjust(string name)
    {
        var file = Path.Combine(_folder, "network.json");
        File.Copy(Repository.PathTo("reference", "networks", name + ".json"), file, overwrite: true);
        var (code, results, remarks) = await AppProcess.Run(_folder, "adjust", "network.json", "--json");
        Assert.Equal((0, ""), (code, remarks));
        return JsonDocument.Parse(results).RootElement;
    }

    private static JsonElement Of(JsonElement answer, string list, string id) =>
        answer.GetProperty(list).EnumerateArray().Single(e => e.GetProperty("id").GetString() == id);

    private static void Printed(double printed, int decimals, double actual) =>
        Assert.True(Math.Abs(printed - actual) <= 0.51 * Math.Pow(10, -decimals), $"printed {printed}, found {actual:R}");

    private static void Place(JsonElement answer, string id, (double X, double Y) place, (double X, double Y) sigma, double unit = 1000)
    {
        var sigma0 = answer.GetProperty("adjustment").GetProperty("sigma0").GetDouble();
        var point = Of(answer, "points", id);
        Printed(place.X, 4, point.GetProperty("x").GetDouble() / unit);
        Printed(place.Y, 4, point.GetProperty("y").GetDouble() / unit);
        Printed(sigma.X, 5, sigma0 * point.GetProperty("ux").GetDouble() / unit);
        Printed(sigma.Y, 5, sigma0 * point.GetProperty("uy").GetDouble() / unit);
    }

    private static void Readings(
        JsonElement answer,
        double sigma0,
        string[] ids,
        double[] redundancies,
        double[]? residuals = null,
        double unit = 1000
    )
    {
        Assert.Equal(1, answer.GetProperty("adjustment").GetProperty("redundancy").GetInt32());
        Printed(sigma0, 6, answer.GetProperty("adjustment").GetProperty("sigma0").GetDouble());
        for (var i = 0; i < ids.Length; i++)
        {
            var reading = Of(answer, "readings", ids[i]);
            Printed(redundancies[i], 6, reading.GetProperty("redundancyNumber").GetDouble());
            if (residuals is not null)
            {
                Printed(residuals[i], 6, reading.GetProperty("residual").GetDouble() / unit);
            }
        }
    }

    // Strang and Borre, Linear Algebra, Geodesy, and GPS, 1997, example 10.1, p. 345; residuals and redundancy numbers: own computation.
    [Fact]
    public async Task StrangBorre10_1()
    {
        var answer = await Adjust("strang-borre-10-1");
        Place(answer, "P", (170.7029, 170.7234), (0.03303, 0.02335));
        Readings(answer, 3.302932, ["1P", "2P", "3P"], [0.500047, 0.250037, 0.249916], [-0.023356, -0.016516, -0.016512]);
    }

    // The same, example 12.4, p. 411, as a free network.
    [Fact]
    public async Task StrangBorre12_4()
    {
        var answer = await Adjust("strang-borre-12-4");
        Place(answer, "P", (170.7123, 170.7185), (0.01079, 0.00682));
        Place(answer, "1", (170.7032, 270.7213), (0.00810, 0.00551));
        Place(answer, "2", (99.9912, 99.9971), (0.00641, 0.00705));
        Place(answer, "3", (241.4333, 99.9830), (0.00640, 0.00705));
        Readings(answer, 1.176363, ["1P", "2P", "3P", "12", "23", "13"], [0.374330, 0.187093, 0.187198, 0.109608, 0.032100, 0.109671]);
    }

    // Ghilani, Adjustment Computations, 5th ed., 2010, examples 14.5 (p. 251) and 19.3 (p. 404), in feet.
    [Fact]
    public async Task Ghilani14_5()
    {
        var answer = await Adjust("ghilani-14-5");
        Place(answer, "Wisconsin", (2_415_776.9044, 391_043.2945), (0.14879, 0.22061), Foot);
        Place(answer, "Campus", (2_416_892.6955, 387_603.2551), (0.10378, 0.27054), Foot);
        Readings(
            answer,
            13.590536,
            ["BW", "BC", "WC", "WB", "CB"],
            [0.161897, 0.337985, 0.073125, 0.205739, 0.221254],
            [0.054684, -0.079011, 0.036751, -0.061645, 0.063927],
            Foot
        );
    }

    // Benning, Statistik in Geodaesie, Geoinformation und Bauwesen, 2011, example 8-2, p. 256; coordinates recomputed.
    [Fact]
    public async Task Benning8_2()
    {
        var answer = await Adjust("benning-8-2");
        Place(answer, "3", (-0.0096, -0.0226), (0.00901, 0.00637));
        Place(answer, "4", (999.9930, 0.0174), (0.00901, 0.00637));
        Readings(answer, 0.688242, ["13", "14", "23", "24", "34"], [0.142852, 0.285706, 0.285722, 0.142863, 0.142857]);
    }
}
