using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Road;
using static Plumbmark.Inspection.Tests.Road.RoadKinematicsLaws;

namespace Plumbmark.Inspection.Tests.Road;

public class AdjusterTests
{
    private const double Inch25 = 0.0254;

    [Fact]
    public void LowUpperBracket_IsTakenUpByWholeShims()
    {
        // The left upper pivots 0.10 in inboard: the shims' own direction and far within their range.
        var answer = With(UpperInboard(0.10m));
        var left = answer.Settings.Single(s => s.Side == Side.Left);
        Assert.True(left.IsRestored);
        var shims = left.Settings.Single(s => s.Adjuster.Kind == AdjusterKind.Shims);
        // 3/32 in is the whole shim count nearest to what puts camber back: 0.10.
        Assert.Equal(3.0 / 32 * Inch25, shims.ToMetres, 1e-9);
        var camber = left.Angles.Single(a => a.Kind == FigureKind.Camber);
        Assert.True(Math.Abs(camber.After - camber.Aim) < 0.25 * Math.Abs(camber.Before - camber.Aim));
        var toe = left.Angles.Single(a => a.Kind == FigureKind.ToeIn);
        Assert.Equal(toe.Aim, toe.After, 1e-4);
    }

    [Fact]
    public void BadlyBentBracket_IsAbsorbed_ButStillCalledAFault()
    {
        var answer = With(UpperInboard(0.22m));
        var left = answer.Settings.Single(s => s.Side == Side.Left);
        Assert.True(left.IsRestored);
        Assert.True(left.IsFaultAbsorbed);
        Assert.Contains(left.Sentences, s => s.Contains("a fault absorbed is still a fault", StringComparison.Ordinal));
        Assert.Contains(left.Sentences, s => s.Contains("more than a degree says something is bent", StringComparison.Ordinal));
        Assert.Contains(left.Sentences, s => s.Contains("more than two shims between the sides", StringComparison.Ordinal));
    }

    [Fact]
    public void BeyondTheRange_StopsAtTheEndAndSaysWhatIsLeft()
    {
        var answer = With(UpperInboard(0.45m));
        var left = answer.Settings.Single(s => s.Side == Side.Left);
        Assert.False(left.IsRestored);
        var shims = left.Settings.Single(s => s.Adjuster.Kind == AdjusterKind.Shims);
        Assert.True(shims.IsAtItsEnd);
        Assert.Equal(0.25 * Inch25, shims.ToMetres, 1e-9);
        Assert.Contains("left over: camber", left.Sentences[0], StringComparison.Ordinal);
    }

    [Fact]
    public void TwoSeparateShimPacks_ReachCastorToo()
    {
        // The same bent mount as story 6, on a car whose upper pivots are shimmed one by one, either way round.
        var car = DemoRoad.Car(DemoRoad.Fault.BentMount);
        Adjuster Pack(CornerPart at) =>
            new(
                $"shims {at}",
                AdjusterKind.Eccentric,
                Side.Right,
                [at],
                AdjusterDirection.Out,
                Inch(-0.25m),
                Inch(0.25m),
                null,
                null,
                Inch(0.06m)
            );
        var rod = car.Road!.Adjusters.Single(a => a is { Kind: AdjusterKind.TrackRod, Side: Side.Right });
        var road = car.Road with { Adjusters = [Pack(CornerPart.UpperFront), Pack(CornerPart.UpperRear), rod] };
        var right = RoadInspection.Of(car with { Road = road }, MeasuredPlaces.None).Settings.Single();
        Assert.True(right.IsRestored);
        Assert.True(right.IsFaultAbsorbed);
        Assert.All(right.Angles, a => Assert.Equal(a.Aim, a.After, 0.03 * Math.PI / 180));
    }

    [Fact]
    public void FittedShims_AreCountedOnce()
    {
        var car = With(UpperInboard(0.10m), fitted: 3);
        var shims = car.Settings.Single(s => s.Side == Side.Left).Settings.Single(s => s.Adjuster.Kind == AdjusterKind.Shims);
        Assert.Equal(3.0 / 32 * Inch25, shims.FromMetres, 1e-9);
        Assert.Equal(3.0 / 32 * Inch25, shims.ToMetres, 1e-9);
        var camber = car.Figures.Single(f => f is { Kind: FigureKind.Camber, Side: Side.Left });
        Assert.True(Math.Abs(camber.Value - camber.Drawn) < 0.1 * Math.PI / 180);
    }

    [Fact]
    public void UnusualShimsThatAreFitted_AreAFact_WhileEveryAngleIsOpen()
    {
        // Nothing is measured, so nothing can be told of settings; the pack of a quarter inch on the car is there all the same.
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var adjusters = car.Road!.Adjusters.Select(a =>
            a is { Kind: AdjusterKind.Shims, Side: Side.Left } ? a with { Fitted = Inch(0.25m), Usual = Inch(0.125m) } : a
        );
        var road = car.Road with { Parts = [], Adjusters = [.. adjusters] };
        var settings = RoadInspection.Of(car with { Road = road }, MeasuredPlaces.None).Settings;
        var left = settings.Single(s => s.Side == Side.Left);
        Assert.Null(left.IsRestored);
        Assert.Contains(
            left.Sentences,
            s =>
                s.Contains("is set at +0.25 in now, beyond the usual", StringComparison.Ordinal)
                && s.Contains("a fault absorbed", StringComparison.Ordinal)
        );
        Assert.True(left.IsFaultAbsorbed);
        Assert.False(settings.Single(s => s.Side == Side.Right).IsFaultAbsorbed);
    }

    private static PartDeviation[] UpperInboard(decimal inches) =>
        [
            new("k", CornerPart.UpperFront, Side.Left, [new(PartQuantity.Out, Inch(-inches), null)], Inch(0.006m)),
            new("m", CornerPart.UpperRear, Side.Left, [new(PartQuantity.Out, Inch(-inches), null)], Inch(0.006m)),
        ];

    private static RoadAnswer With(PartDeviation[] parts, int fitted = 0)
    {
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var others = car.Road!.Parts.Where(p => !parts.Any(q => q.Part == p.Part && q.Side == p.Side));
        var adjusters = car.Road.Adjusters.Select(a =>
            fitted > 0 && a is { Kind: AdjusterKind.Shims, Side: Side.Left } ? a with { Fitted = a.Step!.Value * fitted } : a
        );
        var road = car.Road with { Parts = [.. others, .. parts], Adjusters = [.. adjusters] };
        return RoadInspection.Of(car with { Road = road }, MeasuredPlaces.None);
    }
}
