using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Planning;

namespace Plumbmark.Inspection.Tests.Floor.Planning;

/// <summary>The whole plan: it does what it says, asks for nothing needless, and keeps to what can be dropped and to this garage's minutes.</summary>
public class FloorPlannerTests
{
    private static readonly CarFile s_car = Ladder(6);
    private static readonly MeasuringPlan s_plan = FloorPlanner.For(s_car);

    [Fact]
    public void APlan_IsComplete_AndCountsWhatItAsksFor()
    {
        Assert.True(s_plan.IsComplete, s_plan.Sentence);
        Assert.Equal(s_plan.Lengths, s_plan.Readings.Count(r => r.Kind is "plan" or "repeat" or "direct"));
        Assert.Equal(s_plan.Heights, s_plan.Readings.Count(r => r.Kind == "height"));
        Assert.Equal(s_plan.DropsPerPoint, s_plan.Readings.Where(r => r.Kind == "drop").Max(r => r.Times));
        Assert.Contains($"{s_plan.Lengths} lengths, {s_plan.Heights} heights", s_plan.Sentence, StringComparison.Ordinal);
        Assert.Contains("settles everything to 1/8 in", s_plan.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Minutes_AreTheSumOfTheReadings_ByTheMinutesOfThisGarage()
    {
        var minutes = new ReadingMinutes(Plan: 2, Height: 3, Drop: 5, FirstDrop: 7);
        var plan = FloorPlanner.For(s_car, options: new FloorOptions { Minutes = minutes });
        var drops = plan.Readings.Where(r => r.Kind == "drop").ToList();
        Assert.Equal((2 * plan.Lengths) + (3 * plan.Heights) + drops.Sum(d => 7 + (5 * (d.Times - 1))), plan.Minutes, 1e-9);
        Assert.Equal(
            (1.5 * s_plan.Lengths)
                + (1.5 * s_plan.Heights)
                + s_plan.Readings.Where(r => r.Kind == "drop").Sum(d => 2.5 + (1.5 * (d.Times - 1))),
            s_plan.Minutes,
            1e-9
        );
    }

    [Fact]
    public void Followed_ThePlanOfASoundFrame_SettlesEveryCheckThatMustBeTrue()
    {
        // Every planned reading as an exact one: what is left open would be the plan's fault and not the reader's.
        var answer = FloorInspection.Of(Followed(s_car, s_plan));
        Assert.All(answer.Checks.Where(c => c.MustBeTrue), c => Assert.Equal(Verdict.True, c.Verdict));
        Assert.DoesNotContain(answer.BlindSpots, b => b.Direction != "alike");
        Assert.True(FloorPlanner.For(Followed(s_car, s_plan)).Readings.Count <= 2); // nothing more is to do, but for what rounding leaves
    }

    [Fact]
    public void EachLengthAndHeight_SaysWhatWouldBeOpenWithoutIt() =>
        Assert.All(s_plan.Readings.Where(r => r.Kind != "drop"), r => Assert.NotEmpty(r.Settles));

    [Theory]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(8)]
    public void APlan_HasTwoLengthsToSpare_SoThatASlipCanBeFound(int pairs)
    {
        var plan = FloorPlanner.For(Ladder(pairs));
        var lengths = plan.Readings.Where(r => r.Kind == "plan").ToList();
        var marks = lengths.SelectMany(r => new[] { r.From, r.To }).Distinct().Count();
        Assert.True(lengths.Count - ((2 * marks) - 3) >= 2, $"{lengths.Count} lengths between {marks} marks");
    }

    [Fact]
    public void APlan_TakesNoMoreHeightsThanOfEveryPointOnce_WhereOnceIsEnough()
    {
        // Once each settles all heights to 1/8 in: four heights of 0.6 mm in the twist, 3.29 x 2 x 0.6 mm = 3.9 mm, would not; of 0.5 mm they do.
        var car = Ladder(8);
        var limit = Length.FromMillimetres(3.6m);
        var plan = FloorPlanner.For(car, new Limits(limit, limit, limit, LimitSource.Own));
        Assert.True(plan.IsComplete, plan.Sentence);
        Assert.True(plan.Heights <= car.Frame.Points.Count, $"{plan.Heights} heights of {car.Frame.Points.Count} points");
    }

    [Fact]
    public void HowSure_IsAChoice_AndSurerTakesLonger()
    {
        var coarse = FloorPlanner.For(s_car, All("3/16"));
        var fine = FloorPlanner.For(s_car, All("3/32"));
        Assert.True(coarse.Minutes < s_plan.Minutes && s_plan.Minutes < fine.Minutes, $"{coarse.Minutes} {s_plan.Minutes} {fine.Minutes}");
        Assert.Contains("3/16 in", coarse.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatNoToolCanSettle_IsSaid()
    {
        var plan = FloorPlanner.For(s_car, All("1/64"));
        Assert.False(plan.IsComplete);
        Assert.Contains("with these tools not everything can", plan.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void AFrameWithoutPoints_HasNoPlan()
    {
        var plan = FloorPlanner.For(CarFile.Named("Empty", LengthUnit.Inch));
        Assert.Empty(plan.Readings);
        Assert.False(plan.IsComplete);
    }

    [Fact]
    public void APointThatCannotBeDropped_IsReachedInTheAir_AndNeverDropped()
    {
        var car = s_car with
        {
            Frame = s_car.Frame with { Points = [.. s_car.Frame.Points.Select(p => p.Id == "B.L" ? p with { CannotDrop = true } : p)] },
        };
        var plan = FloorPlanner.For(car);
        Assert.DoesNotContain(plan.Readings, r => r is { Kind: "drop", Point: "B.L" });
        Assert.DoesNotContain(plan.Readings, r => r.Kind is "plan" or "repeat" && (r.From == "B.L" || r.To == "B.L"));
        Assert.True(plan.Readings.Count(r => r.Kind == "direct" && (r.From == "B.L" || r.To == "B.L")) >= 2);
        Assert.Contains(plan.Readings, r => r is { Kind: "height", Point: "B.L" });
        Assert.Contains(plan.Readings, r => r.Kind == "direct" && r.Sentence.StartsWith("Set the trammel from", StringComparison.Ordinal));
    }

    [Fact]
    public void AFrameOfTwoHundredPoints_IsPlannedForThoseThatMatter_AndSaysSo()
    {
        var points =
            from i in Enumerable.Range(0, 100)
            let role = i % 3 == 0 ? PointRole.Suspension : PointRole.Body
            let x = Length.FromMillimetres(-26 * i)
            from point in FrameSkeleton.Pair($"P{i}", null, role, x, Length.FromMillimetres(300 + (i % 5 * 20)))
            select point;
        var car = s_car with { Frame = s_car.Frame with { Points = [.. points] } };
        var before = Environment.CpuUsage.UserTime;
        var plan = FloorPlanner.For(car);
        var seconds = (Environment.CpuUsage.UserTime - before).TotalSeconds;
        Assert.NotEmpty(plan.Readings);
        Assert.Contains("48 points", plan.Sentence, StringComparison.Ordinal);
        Assert.Contains("the 152 others are left aside", plan.Sentence, StringComparison.Ordinal);
        Assert.True(seconds < 10, $"{seconds:F1} s of processor time"); // about a second without a debugger; other tests count too

        var planned = plan.Readings.SelectMany(r => new[] { r.From, r.To, r.Point }).OfType<string>().ToHashSet(StringComparer.Ordinal);
        Assert.True(planned.Count <= 48);
        Assert.Contains("P0.L", planned);
        Assert.Contains("P99.R", planned); // the last suspension pair
    }

    [Fact]
    public void AskedTwice_ItIsTheSamePlan() =>
        Assert.Equal(s_plan.Readings.Select(r => r.Sentence), FloorPlanner.For(s_car).Readings.Select(r => r.Sentence));

    [Fact]
    public void ThePlan_IsATickListInWalkingOrder()
    {
        var text = FloorPlanText.Of(s_car, s_plan);
        var (drops, lengths, heights) = (At("Drops"), At("Lengths"), At("Heights"));
        Assert.True(0 < drops && drops < lengths && lengths < heights);
        Assert.Equal(s_plan.Readings.Count, text.Split("[ ]").Length - 1);
        Assert.Contains("nobody under it", text, StringComparison.Ordinal);
        var left = s_plan
            .Readings.Where(r => r.Kind == "drop" && r.Point!.EndsWith(".L", StringComparison.Ordinal))
            .Select(r => r.Point!)
            .ToList();
        Assert.Equal(left.Order(StringComparer.Ordinal), left); // letters go from the front to the rear
        int At(string heading) => text.IndexOf($"\n{heading}\n", StringComparison.Ordinal);
    }

    [Fact]
    public void Json_SaysTheSame()
    {
        using var json = System.Text.Json.JsonDocument.Parse(FloorPlanJson.Bytes(s_plan));
        Assert.Equal(s_plan.Lengths, json.RootElement.GetProperty("lengths").GetInt32());
        Assert.Equal(3.175, json.RootElement.GetProperty("settlesTo").GetDouble(), 1e-9); // 1/8 in
        var readings = json.RootElement.GetProperty("readings").EnumerateArray().ToList();
        Assert.Equal(s_plan.Readings.Count, readings.Count);
        Assert.All(
            readings.Where(r => r.GetProperty("kind").GetString() == "plan"),
            r => Assert.NotEmpty(r.GetProperty("settles").EnumerateArray())
        );
    }

    private static Limits All(string text)
    {
        var limit = LengthText.Read(text, LengthUnit.Inch).Match(l => l, r => throw new ArgumentException(r.Sentence, nameof(text)));
        return new Limits(limit, limit, limit, LimitSource.Own);
    }

    private static CarFile Ladder(int pairs) =>
        CarFile.Named("Plan", LengthUnit.Inch) with
        {
            Tools =
            [
                new Tool("tape", ToolKind.Tape, TapeClass.II, Length.FromFraction(0, 1, 32, LengthUnit.Inch)),
                new Tool("level", ToolKind.Level, null, Length.FromFraction(0, 1, 32, LengthUnit.Inch), Length.FromMillimetres(0.5m)),
            ],
            Frame = new Frame([.. FrameSkeleton.Ladder(pairs, LengthUnit.Inch)], All("1/8")),
        };

    private static CarFile Followed(CarFile car, MeasuringPlan plan)
    {
        var places = car.Frame.Points.ToDictionary(
            p => p.Id,
            p => (X: p.Sketch!.X!.Value.Millimetres, Y: p.Sketch.Y!.Value.Millimetres),
            StringComparer.Ordinal
        );
        var readings = new List<Reading>();
        foreach (var planned in plan.Readings)
        {
            var id = $"r{readings.Count + 1}";
            switch (planned.Kind)
            {
                case "drop":
                    for (var again = 1; again < planned.Times; again++)
                    {
                        // The usual spread of a drop, so that the repeats do not tell of a better bob.
                        var step = Length.FromMillimetres(again % 2 == 0 ? 0.7m : -0.7m);
                        readings.Add(new Reading.Drop($"r{readings.Count + 1}", planned.Point!, null, step, -step));
                    }

                    break;
                case "direct":
                    throw new NotSupportedException("These frames can be dropped everywhere.");
                case "height":
                    readings.Add(new Reading.Height(id, planned.Point!, Length.FromMillimetres(300)) { Tool = "level" });
                    break;
                default:
                    var (a, b) = (places[planned.From!], places[planned.To!]);
                    var length = Math.Round((decimal)double.Hypot(a.X - b.X, a.Y - b.Y), 3);
                    readings.Add(new Reading.Plan(id, planned.From!, planned.To!, Length.FromMillimetres(length)) { Tool = "tape" });
                    break;
            }
        }

        return car with
        {
            Readings = readings,
        };
    }
}
