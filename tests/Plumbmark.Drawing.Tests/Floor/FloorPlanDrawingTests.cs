using System.Globalization;
using System.Xml.Linq;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Drawing.Floor;

public sealed class FloorPlanDrawingTests
{
    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";
    private static readonly FloorDrawingOptions s_linked = new(HrefOf: id => $"/floor?point={id}&to=\"x\"");

    private static XElement Drawn(CarFile car, FloorAnswer answer, FloorDrawingOptions? options = null) =>
        XElement.Parse(SvgWriter.Write(FloorPlanDrawing.Of(car, answer, options)));

    private static IEnumerable<XElement> Classed(XElement svg, string name) =>
        svg.Descendants().Where(e => (string?)e.Attribute("class") == name);

    private static double Number(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);

    private static XElement PointOf(XElement svg, string id) =>
        svg.Descendants(s_svg + "a").Single(a => (string?)a.Attribute("data-key") == id);

    private static (double X, double Y) TouchOf(XElement svg, string id)
    {
        var touch = Classed(PointOf(svg, id), "ink-touch").Single();
        return (Number(touch, "cx"), Number(touch, "cy"));
    }

    [Fact]
    public void Plan_LeftAndFront_StandLeftAndUp()
    {
        var svg = Drawn(InventedFrame.Car, InventedFrame.Answer, s_linked);
        Assert.True(TouchOf(svg, "B.L").X < TouchOf(svg, "B.R").X);
        Assert.True(TouchOf(svg, "B.L").Y < TouchOf(svg, "H.L").Y);
    }

    [Fact]
    public void Plan_EveryPoint_IsALinkWithItsVerdictInWords()
    {
        var svg = Drawn(InventedFrame.Car, InventedFrame.Answer, s_linked);
        foreach (var point in InventedFrame.Car.Frame.Points)
        {
            Assert.Equal($"/floor?point={point.Id}&to=\"x\"", PointOf(svg, point.Id).Attribute("href")!.Value);
        }

        Assert.Equal("A.R: out", PointOf(svg, "A.R").Attribute("aria-label")!.Value);
        Assert.Equal("D.L: can't tell yet", PointOf(svg, "D.L").Attribute("aria-label")!.Value);
        Assert.Contains(PointOf(svg, "B.L").Descendants(s_svg + "text"), t => t.Value == "true");
    }

    [Fact]
    public void Plan_Deviation_IsDrawnAsManyTimesAsItSays()
    {
        var svg = Drawn(InventedFrame.Car, InventedFrame.Answer, s_linked);
        var sentence = svg.Descendants(s_svg + "text").Single(t => t.Value.StartsWith("Deviations drawn", StringComparison.Ordinal)).Value;
        var times = int.Parse(sentence.Split(' ')[2], CultureInfo.InvariantCulture);

        var deviation = InventedFrame.Answer.Points.Single(p => p.Id == "A.R").Deviation!;
        var shift = Classed(PointOf(svg, "A.R"), "ink-shift").Single();
        var drawnAcross = Number(shift, "x2") - Number(shift, "x1");
        // Scale from two points that deviate: undo the exaggeration by hand.
        var scale = ScaleOf(svg, times);
        Assert.Equal(-deviation.DyMetres!.Value * times * scale, drawnAcross, 0.1); // coordinates are printed to two decimals
    }

    private static double ScaleOf(XElement svg, int times)
    {
        double Should(string id)
        {
            var estimate = InventedFrame.Answer.Points.Single(p => p.Id == id);
            return estimate.XMetres!.Value + ((times - 1) * estimate.Deviation!.DxMetres!.Value);
        }

        return (TouchOf(svg, "H.L").Y - TouchOf(svg, "B.L").Y) / (Should("B.L") - Should("H.L"));
    }

    [Fact]
    public void Plan_DoubtedReading_IsDashedAndNextIsNamed()
    {
        var svg = Drawn(InventedFrame.Car, InventedFrame.Answer);
        Assert.Contains(svg.Descendants(s_svg + "text"), t => t.Value == "doubted");
        Assert.Contains(svg.Descendants(s_svg + "text"), t => t.Value == "r7");
        Assert.Contains(svg.Descendants(s_svg + "text"), t => t.Value == "measure next");
        Assert.Contains("ink-doubted{", Palette.StyleSheet, StringComparison.Ordinal);
        Assert.Matches(@"\.ink-doubted\{[^}]*stroke-dasharray:6 4", Palette.StyleSheet);
    }

    [Fact]
    public void Plan_OnlySketches_DrawsHollowPointsAndClaimsNothing()
    {
        var svg = Drawn(InventedFrame.Car, InventedFrame.Nothing, s_linked);
        Assert.All(InventedFrame.Car.Frame.Points, p => Assert.Single(Classed(PointOf(svg, p.Id), "ink-hollow")));
        Assert.DoesNotContain(svg.Descendants(s_svg + "text"), t => t.Value.Contains("Deviations", StringComparison.Ordinal));
        Assert.Empty(Classed(svg, "ink-frame"));
    }

    [Fact]
    public void Plan_NoSketches_StandsInTheOrderOfTheListAndSaysSo()
    {
        var bare = InventedFrame.Car with { Frame = new Frame([.. InventedFrame.Car.Frame.Points.Select(p => p with { Sketch = null })]) };
        var svg = Drawn(bare, InventedFrame.Nothing, s_linked);
        Assert.True(TouchOf(svg, "A.L").Y < TouchOf(svg, "B.L").Y);
        Assert.Equal(TouchOf(svg, "A.L").Y, TouchOf(svg, "A.R").Y);
        Assert.True(TouchOf(svg, "A.L").X < TouchOf(svg, "A.R").X);
        Assert.Contains("No places sketched yet", svg.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OnePointOrNone_IsStillAPicture()
    {
        var one = InventedFrame.Car with { Frame = new Frame([new FramePoint("A.L")]), Readings = [] };
        Assert.Equal("A.L", (string?)PointOf(Drawn(one, InventedFrame.Nothing, s_linked), "A.L").Attribute("data-key"));
        var none = one with { Frame = Frame.Empty };
        Assert.Contains("No points yet", Drawn(none, InventedFrame.Nothing).Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_PointWithoutEstimateAmongMeasured_StandsByItsSketch()
    {
        var some = InventedFrame.Answer with { Points = [.. InventedFrame.Answer.Points.Where(p => p.Id != "D.L")] };
        var svg = Drawn(InventedFrame.Car, some, s_linked);
        Assert.Single(Classed(PointOf(svg, "D.L"), "ink-hollow"));
        Assert.InRange(TouchOf(svg, "D.L").Y, TouchOf(svg, "C.L").Y, TouchOf(svg, "E.L").Y);
    }

    [Fact]
    public void Plan_Picked_IsRingedAndTold()
    {
        var svg = Drawn(InventedFrame.Car, InventedFrame.Answer, s_linked with { Picked = ["C.L"] });
        Assert.Single(Classed(PointOf(svg, "C.L"), "ink-picked"));
        Assert.EndsWith(", picked", PointOf(svg, "C.L").Attribute("aria-label")!.Value, StringComparison.Ordinal);
        Assert.Single(Classed(svg, "ink-picked"));
    }

    /// <summary>Of every length in turn, as if it were doubted and another wanted next: the words stand where no name stands, nor on each other.</summary>
    [Fact]
    public void Plan_WordsOfADoubtedReadingAndOfTheNext_CoverNoLabel()
    {
        var lengths = InventedFrame.Car.Readings.OfType<Reading.Plan>().ToList();
        Assert.NotEmpty(lengths);
        for (var i = 0; i < lengths.Count; i++)
        {
            var next = lengths[(i + 5) % lengths.Count];
            var answer = InventedFrame.Answer with
            {
                Suspects = [new Suspect(lengths[i].Id, null, "free", 0.003, 100, "Doubted.")],
                Next = [new NextReading("plan", next.From, next.To, null, [], 1.5, "Next.")],
            };
            var words = WordsOf(FloorPlanDrawing.Of(InventedFrame.Car, answer).Shapes).ToList();
            var ofReadings = words.Where(w => w.Lettering == Palette.DoubtedWord || w.Lettering == Palette.NextWord).ToList();
            var labels = words.Where(w => w.Lettering == Palette.Name || w.Lettering == Palette.Note || w.Lettering == Palette.OutWord);
            Assert.Contains(ofReadings, w => w.Text == "doubted");
            foreach (var reading in ofReadings)
            {
                Assert.DoesNotContain(labels, l => PatchOf(l).Overlaps(PatchOf(reading)));
                Assert.DoesNotContain(ofReadings, o => o.Lettering != reading.Lettering && PatchOf(o).Overlaps(PatchOf(reading)));
            }
        }
    }

    private static IEnumerable<Shape.Words> WordsOf(IEnumerable<Shape> shapes) =>
        shapes.SelectMany(s =>
            s switch
            {
                Shape.Words w => [w],
                Shape.Group g => WordsOf(g.Shapes),
                Shape.Link l => WordsOf(l.Shapes),
                _ => [],
            }
        );

    // Letters from their height above the base line to what hangs below it.
    private static Patch PatchOf(Shape.Words words)
    {
        var width = Plate.WidthOf(words.Text, words.Lettering);
        var left =
            words.Anchor == Anchor.Start ? words.At.X
            : words.Anchor == Anchor.End ? words.At.X - width
            : words.At.X - (width / 2);
        return new Patch(left, words.At.Y - (words.Lettering.Size * 0.7), left + width, words.At.Y + (words.Lettering.Size * 0.2));
    }
}
