using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Comparing;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Inspection.Tests.Floor.Comparing;

public class FrameLieTests
{
    private static readonly FrameDesign s_design = new([
        new("A", 1000, 280, 300, PointRole.Other),
        new("B", 600, 350, 300, PointRole.Suspension),
        new("C", 0, 360, 300, PointRole.Body),
        new("D", -500, 370, 300, PointRole.Spring),
        new("E", -1000, 380, 300, PointRole.Spring),
    ]);

    private static (MeasuredFrame Frame, Contrasts Contrasts, FrameLie Lie) Placed(TrueFrame frame, bool book = false)
    {
        var placed = FramePlacing.InOwnAxes(PlacedFrames.Of(frame, 0.5, book: book), []);
        var contrasts = Contrasts.Of(placed);
        return (placed, contrasts, FrameLie.Of(placed, contrasts));
    }

    private static double Value(TrueFrame frame, ContrastKind kind, int pair, bool book = false)
    {
        var (_, contrasts, lie) = Placed(frame, book);
        return lie.Adjust(contrasts.Sides(kind, pair)!)!.ValueMetres * 1000;
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void ABentHorn_DoesNotDragTheCentreLine(bool book)
    {
        // 8 mm in at the right horn: a centre line drawn through the first and the last middle would throw B by 4 mm · 600/2000.
        var bent = new TrueFrame(s_design).Bend("A.R", 0, 8, 0);
        Assert.Equal(4, Value(bent, ContrastKind.Middle, 0, book), 0.01);
        Assert.All(Enumerable.Range(1, 4), pair => Assert.Equal(0, Value(bent, ContrastKind.Middle, pair, book), 0.01));
    }

    [Fact]
    public void AFrameNotLevel_LeansInCommon_AndNoPairIsHighForIt()
    {
        var (_, contrasts, lie) = Placed(new TrueFrame(s_design).Lean(0.01, 0.02));
        Assert.Equal(0.01, lie.Roll()!.Value.Slope, 1e-6);
        Assert.All(
            Enumerable.Range(0, 5),
            pair => Assert.Equal(0, lie.Adjust(contrasts.Sides(ContrastKind.Level, pair)!)!.ValueMetres, 1e-6)
        );
    }

    [Fact]
    public void ADiamond_IsStaggerEverywhere_AndNoSideShift()
    {
        var diamond = new TrueFrame(s_design).Diamond(6);
        Assert.All(Enumerable.Range(0, 5), pair => Assert.Equal(6, Value(diamond, ContrastKind.Stagger, pair), 0.05)); // turn: 6/700 of a millimetre each
        Assert.All(Enumerable.Range(0, 5), pair => Assert.Equal(0, Value(diamond, ContrastKind.Middle, pair), 0.05));
    }

    [Fact]
    public void TwoPairsAlone_SayNothingAboutSideShift()
    {
        var two = new FrameDesign([s_design.Stations[0], s_design.Stations[4]]);
        var (_, contrasts, lie) = Placed(new TrueFrame(two));
        Assert.Null(lie.Adjust(contrasts.Sides(ContrastKind.Middle, 0)!));
        Assert.NotNull(lie.Adjust(contrasts.Sides(ContrastKind.Stagger, 0)!));
    }

    [Fact]
    public void APairHeldAgainstTheOthers_IsLessSureThanItsOwnMarks()
    {
        // The middle of two marks is sure to 0.5/√2 mm; held against a line through the others it must be less so, most at the ends.
        var (_, contrasts, lie) = Placed(new TrueFrame(s_design));
        var u = Enumerable.Range(0, 5).Select(pair => lie.Adjust(contrasts.Sides(ContrastKind.Middle, pair)!)!.UMetres * 1000).ToList();
        Assert.All(u, v => Assert.True(v > 0.5 / Math.Sqrt(2)));
        Assert.True(u[0] > u[2] && u[4] > u[2]);
    }

    [Fact]
    public void Uncertainty_IsWhatRepeatedSurveysScatter()
    {
        var random = new Random(11);
        var values = new List<double>();
        var u = 0.0;
        for (var i = 0; i < 200; i++)
        {
            var placed = FramePlacing.InOwnAxes(PlacedFrames.Of(new TrueFrame(s_design), 0.5, random), []);
            var contrasts = Contrasts.Of(placed);
            var adjusted = FrameLie.Of(placed, contrasts).Adjust(contrasts.Sides(ContrastKind.Middle, 1)!)!;
            values.Add(adjusted.ValueMetres);
            u = adjusted.UMetres;
        }

        var spread = Math.Sqrt(values.Average(v => v * v));
        Assert.Equal(1, spread / u, 0.15); // 200 surveys know a spread to 5 %; down-weighting adds a few per cent
    }

    [Fact]
    public void DeclaredAsymmetry_IsNotDamage()
    {
        var frame = PlacedFrames.Of(new TrueFrame(s_design).Bend("C.L", 20, 10, -5), 0.5);
        var points = frame.Points.Select(p => p.Id == "C.L" ? p with { Asymmetry = new Place(Mm(20), Mm(10), Mm(-5)) } : p).ToList();
        var declared = FramePlacing.InOwnAxes(new MeasuredFrame(points, frame.Coordinates, frame.Values, frame.Covariance), []);
        var contrasts = Contrasts.Of(declared);
        var lie = FrameLie.Of(declared, contrasts);
        foreach (var kind in new[] { ContrastKind.Middle, ContrastKind.Stagger, ContrastKind.Level })
        {
            Assert.Equal(0, lie.Adjust(contrasts.Sides(kind, 2)!)!.ValueMetres * 1000, 0.05);
        }
    }

    [Fact]
    public void AnUnknownAsymmetry_IsNotCompared()
    {
        var frame = PlacedFrames.Of(new TrueFrame(s_design), 0.5);
        var points = frame.Points.Select(p => p.Id == "C.R" ? p with { Asymmetry = new Place(null, Mm(0), Mm(0)) } : p).ToList();
        var contrasts = Contrasts.Of(new MeasuredFrame(points, frame.Coordinates, frame.Values, frame.Covariance));
        Assert.Null(contrasts.Sides(ContrastKind.Stagger, 2));
        Assert.NotNull(contrasts.Sides(ContrastKind.Middle, 2));
    }

    private static Engine.Lengths.Length Mm(decimal value) => Engine.Lengths.Length.FromMillimetres(value);
}
