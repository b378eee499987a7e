using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Floor;

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

    [Fact]
    public void AnswerWithTheInchPutRight_IsOut_ByTheHornAlone()
    {
        var inch = Engine.Lengths.Length.FromInches(1);
        var spoilt = s_car.Readings.OfType<Reading.Plan>().Single(r => r is { From: "B.R", To: "E.L" });
        var mended = spoilt with { Value = spoilt.Value - inch };
        var answer = FloorInspection.Of(s_car with { Readings = [.. s_car.Readings.Select(r => r == spoilt ? mended : r)] });
        Assert.Equal(Verdict.Out, answer.Overall.Verdict);

        // Left against right cannot tell one horn moved by all of it from both moved by half: half is what is certain.
        var horn = Assert.Single(answer.Checks, c => c.Id == "damage:A");
        var moved = Assert.Single(answer.Damage);
        Assert.Equal((moved.AmountMetres / 2, moved.UMetres / 2), (horn.ValueMetres, horn.UMetres));
        var trueMetres = Math.Sqrt(Math.Pow(DemoFrame.HornInInches, 2) + Math.Pow(DemoFrame.HornDownInches, 2)) * 0.0254;
        Assert.InRange(trueMetres, moved.AmountMetres - (2 * moved.UMetres), moved.AmountMetres + (2 * moved.UMetres));
        Assert.All(answer.Checks.Where(c => c.Verdict == Verdict.Out), c => Assert.EndsWith(":A", c.Id, StringComparison.Ordinal));
    }

    private static Reading.Plan? Mirrored(Reading.Plan reading)
    {
        static string Other(string id) => id.EndsWith(".L", StringComparison.Ordinal) ? $"{id[..^1]}R" : $"{id[..^1]}L";
        return s_car
            .Readings.OfType<Reading.Plan>()
            .FirstOrDefault(r => r != reading && r.From == Other(reading.From) && r.To == Other(reading.To));
    }
}
