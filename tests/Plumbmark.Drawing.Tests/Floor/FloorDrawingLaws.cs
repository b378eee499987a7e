using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Testing;

namespace Plumbmark.Drawing.Floor;

public sealed class FloorDrawingLaws
{
    private static readonly FloorDrawingOptions s_linked = new(HrefOf: id => "/" + id);

    [Fact]
    public void AnyCar_DrawsEveryPointInsideThePicture_SameTextTwice() =>
        CarFiles.Any.Sample(
            car =>
            {
                var text = SvgWriter.Write(FloorPlanDrawing.Of(car, InventedFrame.Nothing, s_linked));
                Assert.Equal(text, SvgWriter.Write(FloorPlanDrawing.Of(car, InventedFrame.Nothing, s_linked)));
                Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
                var svg = XElement.Parse(text);
                var size = svg.Attribute("viewBox")!.Value.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
                var touches = svg.Descendants().Where(e => (string?)e.Attribute("class") == "ink-touch").ToList();
                Assert.Equal(car.Frame.Points.Count, touches.Count);
                foreach (var touch in touches)
                {
                    Assert.InRange(double.Parse(touch.Attribute("cx")!.Value, CultureInfo.InvariantCulture), 0, size[2]);
                    Assert.InRange(double.Parse(touch.Attribute("cy")!.Value, CultureInfo.InvariantCulture), 0, size[3]);
                }
            },
            iter: 60
        );

    [Fact]
    public void Lane_AnyLabels_KeepTheirOrderApartAndInside() =>
        Gen.Select(Gen.Double[-50, 550], Gen.Double[8, 30], Gen.Int[0, 3])
            .List[0, 40]
            .Sample(wants =>
            {
                var labels = wants.Select((w, i) => new Lane.Label($"p{i}", w.Item1, w.Item2, w.Item3)).ToList();
                var placed = Lane.Place(labels, 0, 500);
                var inOrder = labels
                    .Where(l => placed.ContainsKey(l.Key))
                    .OrderBy(l => l.Wanted)
                    .ThenBy(l => l.Key, StringComparer.Ordinal);
                var end = 0.0;
                foreach (var label in inOrder)
                {
                    var start = placed[label.Key] - (label.Size / 2);
                    Assert.True(start >= end - 1e-6, "labels overlap"); // a millionth of a pixel: rounding
                    end = start + label.Size;
                }

                Assert.True(end <= 500 + 1e-6);
                if (labels.Sum(l => l.Size) <= 500)
                {
                    Assert.Equal(labels.Count, placed.Count);
                }
            });

    [Fact]
    public void Lane_LabelsApart_StandWhereTheyWant()
    {
        var placed = Lane.Place([new("a", 40, 10, 0), new("b", 90, 10, 0)], 0, 200);
        Assert.Equal(40, placed["a"], 9);
        Assert.Equal(90, placed["b"], 9);
    }

    [Fact]
    public void SketchFit_TurnedAndShiftedSketch_IsLaidOnTheMeasuredPoints() =>
        Gen.Select(Gen.Double[-3, 3], Gen.Double[-2, 2], Gen.Double[-2, 2])
            .Sample(
                (angle, dx, dy) =>
                {
                    (double X, double Y)[] sketch = [(0, 0.4), (0, -0.4), (2, 0.3), (1.2, -0.5)];
                    (double X, double Y) Moved((double X, double Y) p) =>
                        (dx + (Math.Cos(angle) * p.X) - (Math.Sin(angle) * p.Y), dy + (Math.Sin(angle) * p.X) + (Math.Cos(angle) * p.Y));
                    var fit = SketchFit.Of([.. sketch.Select(p => (p, Moved(p)))]);
                    var expected = Moved((3.3, 0.7));
                    var (x, y) = fit.ToMeasured(3.3, 0.7);
                    Assert.Equal(expected.X, x, 1e-9); // metres; rounding of a few operations
                    Assert.Equal(expected.Y, y, 1e-9);
                }
            );
}
