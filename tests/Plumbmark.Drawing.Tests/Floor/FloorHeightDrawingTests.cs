using System.Globalization;
using System.Xml.Linq;
using Plumbmark.Drawing.Pictures;

namespace Plumbmark.Drawing.Floor;

public sealed class FloorHeightDrawingTests
{
    private static readonly FloorDrawingOptions s_linked = new(HrefOf: id => "/" + id);

    private static (double X, double Y) TouchOf(XElement svg, string id)
    {
        var link = svg.Descendants().Single(e => (string?)e.Attribute("data-key") == id);
        var touch = link.Elements().Single(e => (string?)e.Attribute("class") == "ink-touch");
        return (
            double.Parse(touch.Attribute("cx")!.Value, CultureInfo.InvariantCulture),
            double.Parse(touch.Attribute("cy")!.Value, CultureInfo.InvariantCulture)
        );
    }

    [Fact]
    public void Side_FrontIsLeftAndHighIsUp()
    {
        var svg = XElement.Parse(SvgWriter.Write(FloorSideDrawing.Of(InventedFrame.Car, InventedFrame.Answer, s_linked)));
        Assert.True(TouchOf(svg, "A.L").X < TouchOf(svg, "H.L").X);
        Assert.True(TouchOf(svg, "A.L").Y < TouchOf(svg, "A.R").Y, "A.L is the higher of its pair");
        Assert.Contains("Deviations drawn", svg.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Side_WithoutHeights_SaysSoAndDrawsNothing()
    {
        var svg = SvgWriter.Write(FloorSideDrawing.Of(InventedFrame.Car, InventedFrame.Nothing));
        Assert.Contains("No heights yet", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("<circle", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void End_FrontPairIsOnTopAndTheHigherSideIsTold()
    {
        var svg = XElement.Parse(SvgWriter.Write(FloorEndDrawing.Of(InventedFrame.Car, InventedFrame.Answer)));
        var texts = svg.Descendants().Where(e => e.Name.LocalName == "text").ToList();
        double Y(string text) => double.Parse(texts.Single(t => t.Value == text).Attribute("y")!.Value, CultureInfo.InvariantCulture);
        Assert.True(Y("A.L") < Y("H.L"));
        Assert.Contains(texts, t => t.Value == "left higher by 3/16 in ±1/16 in");
        Assert.Contains(texts, t => t.Value.StartsWith("level ±", StringComparison.Ordinal));
    }
}
