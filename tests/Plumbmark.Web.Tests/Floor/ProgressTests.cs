using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Web.Floor;

namespace Plumbmark.Web.Tests.Floor;

/// <summary>How far the job has come is counted on the usual round and leads to the next end that can be judged.</summary>
public sealed class ProgressTests
{
    private static readonly CarFile s_fresh = CarFile.Named("Ladder", LengthUnit.Inch) with
    {
        Frame = new Frame([.. FrameSkeleton.Ladder(5, LengthUnit.Inch).Where(p => !p.Id.StartsWith('E'))]),
    };

    [Fact]
    public void FourPairs_AreEighteenLengthsAndEightHeights()
    {
        var progress = FloorProgress.Of(s_fresh)!;
        Assert.Equal((0, 18, 0, 8), (progress.Lengths, progress.OfLengths, progress.Heights, progress.OfHeights));
        // A, B in front: two widths, two sides, two diagonals, four heights.
        Assert.Equal("0 of 18 lengths, 0 of 8 heights. 10 more, and the front can be judged.", progress.Words);
    }

    [Fact]
    public void EachReadingOfTheRound_CountsOnce_AndTheLastEndIsNamed()
    {
        var car = s_fresh;
        var said = new List<string>();
        foreach (var line in MeasuringRound.Usual(s_fresh).Where(l => l.Kind is RoundKind.Plan or RoundKind.Height))
        {
            Reading reading = line.To is { } to
                ? new Reading.Plan($"r{car.Readings.Count}", line.From, to, Length.FromInches(40))
                : new Reading.Height($"r{car.Readings.Count}", line.From, Length.FromInches(12));
            car = car with { Readings = [.. car.Readings, reading, reading with { Id = $"again-{car.Readings.Count}" }] };
            said.Add(FloorProgress.Of(car)!.Words);
        }

        Assert.Contains(said, s => s.EndsWith("One more, and the front can be judged.", StringComparison.Ordinal));
        Assert.Contains(said, s => s.EndsWith("One more, and the rear can be judged.", StringComparison.Ordinal));
        Assert.Equal("18 of 18 lengths, 8 of 8 heights. The usual round is done.", said[^1]);
    }
}
