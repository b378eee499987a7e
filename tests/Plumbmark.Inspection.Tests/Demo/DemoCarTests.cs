using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;

namespace Plumbmark.Inspection.Tests.Demo;

/// <summary>The demo car is what it says: invented, the same every time, with one bent horn and one inch too many.</summary>
public sealed class DemoCarTests
{
    private static readonly CarFile s_car = DemoCar.File();

    [Fact]
    public void File_IsTheSameEveryTime_AndReadsBack()
    {
        var bytes = CarFileWriter.Write(s_car);
        Assert.Equal(bytes, CarFileWriter.Write(DemoCar.File()));
        Assert.Equal(bytes, CarFileReader.Read(bytes).Match(CarFileWriter.Write, _ => []));
    }

    [Fact]
    public void OneDiagonal_IsAnInchTooLong_AndNoOther()
    {
        var differences = s_car
            .Readings.OfType<Reading.Plan>()
            .Where(r => Mirrored(r) is not null && !r.Points.Any(p => p.StartsWith('A')))
            .Select(r => (r.From, r.To, Inches: Math.Abs(r.Value.Inches - Mirrored(r)!.Value.Inches)))
            .ToList();
        var blundered = differences.Where(d => d.Inches > 0.5).Select(d => (d.From, d.To)).Order().ToList();
        Assert.Equal([("B.L", "E.R"), ("B.R", "E.L")], blundered);
        Assert.All(differences.Where(d => d.Inches <= 0.5), d => Assert.InRange(d.Inches, 0, 0.25));
    }

    [Fact]
    public void RightHorn_IsInAndDown()
    {
        // 0.31 in in and 0.19 in down, give or take what tape, drop and level can read.
        var across = s_car.Readings.OfType<Reading.Plan>().Single(r => r is { From: "A.L", To: "A.R" });
        Assert.InRange(across.Value.Inches, 22 - DemoFrame.HornInInches - 0.15, 22 - DemoFrame.HornInInches + 0.15);
        var heights = s_car.Readings.OfType<Reading.Height>().ToDictionary(r => r.Point, r => r.Value.Inches, StringComparer.Ordinal);
        Assert.InRange(heights["A.L"] - heights["A.R"], DemoFrame.HornDownInches - 0.15, DemoFrame.HornDownInches + 0.15);
    }

    private static Reading.Plan? Mirrored(Reading.Plan reading)
    {
        static string Other(string id) => id.EndsWith(".L", StringComparison.Ordinal) ? $"{id[..^1]}R" : $"{id[..^1]}L";
        return s_car
            .Readings.OfType<Reading.Plan>()
            .FirstOrDefault(r => r != reading && r.From == Other(reading.From) && r.To == Other(reading.To));
    }
}
