using System.Globalization;
using System.Xml.Linq;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Demo;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Drawing.Road;

public sealed class RoadDrawingTests
{
    private static readonly RoadDisplay s_display = RoadDisplay.Of(DemoRoad.Car(DemoRoad.Fault.None));

    public static TheoryData<string> Views => ["front", "side-left", "side-right", "top", "toe", "camber"];

    [Theory]
    [MemberData(nameof(Views))]
    public void EveryView_StaysInsideItsPicture_AndIsTheSameTwice(string view)
    {
        foreach (var fault in Enum.GetValues<DemoRoad.Fault>())
        {
            var picture = Of(view, Answer(fault));
            var svg = SvgWriter.Write(picture);
            Assert.Equal(svg, SvgWriter.Write(Of(view, Answer(fault))));
            foreach (var (x, y) in Spots(XElement.Parse(svg)))
            {
                Assert.InRange(x, -1, picture.Width + 1);
                Assert.InRange(y, -1, picture.Height + 1);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Views))]
    public void NothingDrawn_SaysWhy(string view)
    {
        var empty = RoadInspection.Of(CarFile.Named("empty", Engine.Lengths.LengthUnit.Inch), MeasuredPlaces.None);
        var picture = Of(view, empty);
        Assert.Contains(picture.Shapes, s => s is Shape.Words);
        Assert.DoesNotContain(picture.Shapes, s => s is Shape.Path or Shape.Group);
    }

    [Fact]
    public void Front_LeftIsOnTheLeft_AndTheBentSideIsDrawnOff()
    {
        var picture = RoadFrontDrawing.Of(Answer(DemoRoad.Fault.BentMount));
        var groups = picture.Shapes.OfType<Shape.Group>().ToDictionary(g => g.Name);
        double Middle(string name) => groups[name].Shapes.OfType<Shape.Path>().SelectMany(p => p.Spots).Average(s => s.X);
        Assert.True(Middle("found-left") < picture.Width / 2);
        Assert.Equal(Middle("drawn-left"), Middle("found-left"), 1e-6);
        Assert.True(Math.Abs(Middle("drawn-right") - Middle("found-right")) > 1);
        Assert.Contains("Deviations drawn", SvgWriter.Write(picture), StringComparison.Ordinal);
    }

    [Fact]
    public void Top_ThrustToTheLeft_LeansToTheLeft()
    {
        // The right spring's eye forward: the right rear wheel stands ahead, so the rear drives to the left.
        var car = DemoRoad.Car(DemoRoad.Fault.None);
        var eye = new PartDeviation(
            "e",
            CornerPart.RearEye,
            Side.Right,
            [new(PartQuantity.Forward, Engine.Lengths.Length.FromInches(0.5m), null)]
        );
        var parts = car.Road!.Parts.Where(p => p is not { Part: CornerPart.RearEye, Side: Side.Right }).Append(eye);
        var answer = RoadInspection.Of(car with { Road = car.Road with { Parts = [.. parts] } }, MeasuredPlaces.None);
        var thrust = RoadTopDrawing.Of(answer, s_display).Shapes.OfType<Shape.Line>().Single(l => l.Ink == Palette.Next && l.From.X > 100);
        Assert.True(thrust.To.X < thrust.From.X - 2);
        Assert.True(thrust.To.Y < thrust.From.Y);
    }

    [Fact]
    public void Toe_TheWrongLeversCurve_ReachesFurtherThanTheOther()
    {
        var picture = RoadCurveDrawing.Toe(Answer(DemoRoad.Fault.WrongLever), s_display);
        double Reach(Ink ink)
        {
            var spots = picture.Shapes.OfType<Shape.Path>().Single(p => p.Ink == ink).Spots;
            return spots.Max(s => s.X) - spots.Min(s => s.X);
        }

        Assert.True(Reach(Palette.Frame) > 3 * Reach(Palette.FarSide));
        Assert.Contains("toe-out", SvgWriter.Write(picture), StringComparison.Ordinal);
    }

    private static RoadAnswer Answer(DemoRoad.Fault fault) => RoadInspection.Of(DemoRoad.Car(fault), MeasuredPlaces.None);

    private static Picture Of(string view, RoadAnswer answer) =>
        view switch
        {
            "front" => RoadFrontDrawing.Of(answer),
            "side-left" => RoadSideDrawing.Of(answer, Side.Left),
            "side-right" => RoadSideDrawing.Of(answer, Side.Right),
            "top" => RoadTopDrawing.Of(answer, s_display),
            "toe" => RoadCurveDrawing.Toe(answer, s_display),
            _ => RoadCurveDrawing.Camber(answer, s_display),
        };

    private static IEnumerable<(double X, double Y)> Spots(XElement svg)
    {
        static double Number(XAttribute a) => double.Parse(a.Value, CultureInfo.InvariantCulture);
        foreach (var e in svg.Descendants())
        {
            foreach (var (x, y) in new[] { ("x1", "y1"), ("x2", "y2"), ("cx", "cy"), ("x", "y") })
            {
                if (e.Attribute(x) is { } ax && e.Attribute(y) is { } ay)
                {
                    yield return (Number(ax), Number(ay));
                }
            }
        }
    }
}
