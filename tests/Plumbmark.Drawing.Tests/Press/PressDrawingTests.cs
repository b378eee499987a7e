using System.Globalization;
using System.Xml.Linq;
using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Press;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Press;
using Plumbmark.Testing;

namespace Plumbmark.Drawing.Tests.Press;

/// <summary>The set-up to scale, and travel against set.</summary>
public sealed class PressDrawingTests
{
    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";
    private static readonly PressWords s_words = new(LengthUnit.Inch);

    [Fact]
    public void SetUp_IsToScale()
    {
        var picture = PressSetUpDrawing.Of(Report(PressJobSamples.LowerArm.With("\"leftArm\": 4", "\"leftArm\": 2")).Plan!, s_words);
        var blocks = Groups(picture, "block").Select(MiddleX).Order().ToList();
        var ram = MiddleX(Groups(picture, "ram").Single());
        Assert.Equal(2, blocks.Count);
        Assert.Equal(2.0, (blocks[1] - ram) / (ram - blocks[0]), 0.01); // 2 in left, 4 in right
    }

    [Fact]
    public void SetUp_SaysTheArmsInWords()
    {
        var texts = Texts(PressSetUpDrawing.Of(Report(PressJobSamples.LowerArm).Plan!, s_words));
        Assert.Equal(2, texts.Count(t => t == "4.00 in"));
        Assert.Contains(texts, t => t.StartsWith("to scale", StringComparison.Ordinal));
    }

    [Fact]
    public void Plot_HasEveryBite_AndTheNext()
    {
        var report = Report(PressJobSamples.LowerArmAfter(3));
        var picture = TravelSetDrawing.Of(report.Plan!, report.Log!, report.State, s_words);
        Assert.Equal(3, Groups(picture, "bite").Count());
        Assert.Contains(Texts(picture), t => t.StartsWith("next 0.", StringComparison.Ordinal));
        Assert.Contains("Bite 2: travel 0.16. 0.02 in stayed, 0.14 in sprang back.", picture.Description, StringComparison.Ordinal);
        var heights = Groups(picture, "bite").Select(g => Number(g.Descendants().First(e => e.Attribute("cy") is not null), "cy")).ToList();
        Assert.Equal(heights.OrderDescending(), heights); // more stays with every bite, and up is more
    }

    [Fact]
    public void Plot_OfAFinishedJob_HasNoNext()
    {
        var report = Report(PressJobSamples.LowerArmAfter(4));
        Assert.DoesNotContain(
            Texts(TravelSetDrawing.Of(report.Plan!, report.Log!, report.State, s_words)),
            t => t.StartsWith("next", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void SameJob_SameBytes()
    {
        var report = Report(PressJobSamples.LowerArmAfter(2));
        Assert.Equal(
            SvgWriter.Write(TravelSetDrawing.Of(report.Plan!, report.Log!, report.State, s_words)),
            SvgWriter.Write(TravelSetDrawing.Of(report.Plan!, report.Log!, report.State, s_words))
        );
    }

    private static PressReport Report(string text) =>
        CarFileReader
            .Read(text.Utf8())
            .Match(file => PressReport.Of(file.Press[0]), faults => throw new InvalidOperationException(string.Join('\n', faults)));

    private static XElement Svg(Picture picture) => XElement.Parse(SvgWriter.Write(picture));

    private static IEnumerable<XElement> Groups(Picture picture, string name) =>
        Svg(picture).Descendants(s_svg + "g").Where(g => ((string?)g.Attribute("class"))?.Split(' ').Contains(name) == true);

    private static List<string> Texts(Picture picture) => [.. Svg(picture).Descendants(s_svg + "text").Select(t => t.Value)];

    private static double MiddleX(XElement group)
    {
        var path = group.Descendants(s_svg + "polygon").Select(p => (string)p.Attribute("points")!).First();
        var numbers = System
            .Text.RegularExpressions.Regex.Matches(
                path,
                @"-?\d+(\.\d+)?",
                System.Text.RegularExpressions.RegexOptions.ExplicitCapture,
                TimeSpan.FromSeconds(1)
            )
            .Select(m => double.Parse(m.Value, CultureInfo.InvariantCulture))
            .ToList();
        var xs = numbers.Where((_, i) => i % 2 == 0).ToList();
        return (xs.Min() + xs.Max()) / 2;
    }

    private static double Number(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);
}
