using System.Xml.Linq;
using CsCheck;

namespace Plumbmark.Drawing.Pictures;

public sealed class SvgWriterTests
{
    private static Picture With(params Shape[] shapes) => new(100, 50, "Title", "Words", shapes);

    [Fact]
    public void AnyText_IsEscapedAndComesBack() =>
        Gen.String.Sample(text =>
        {
            var svg = SvgWriter.Write(With(new Shape.Link(text, text, text, [new Shape.Words(new Spot(1, 2), text, Palette.Note)])));
            var element = XElement.Parse(svg);
            Assert.DoesNotContain("script", string.Concat(element.Descendants().Select(e => e.Name.LocalName)), StringComparison.Ordinal);
        });

    [Fact]
    public void Text_WithMarkup_StaysText()
    {
        var svg = SvgWriter.Write(With(new Shape.Words(new Spot(0, 0), "<script>1 & \"2\"</script>", Palette.Note)));
        Assert.Contains("&lt;script&gt;1 &amp; &quot;2&quot;&lt;/script&gt;", svg, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.125, "1.13")]
    [InlineData(-0.001, "0")]
    [InlineData(12.5, "12.5")]
    [InlineData(1e7, "10000000")]
    public void Numbers_AreShortAndTheSameEverywhere(double value, string text) => Assert.Equal(text, SvgAttributes.Number(value));

    [Fact]
    public void Classes_LeaveColoursToTheStyleSheet_AttributesCarryThem()
    {
        var picture = With(new Shape.Line(new Spot(0, 0), new Spot(1, 1), Palette.Doubted));
        Assert.DoesNotContain("stroke", SvgWriter.Write(picture), StringComparison.Ordinal);
        var alone = SvgWriter.Write(picture, SvgDress.Attributes);
        Assert.Contains("stroke-dasharray=\"6 4\"", alone, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"ink", alone, StringComparison.Ordinal);
    }

    // 1 unit is about 1 px on a phone of 360 px; 12 px is the least that is still read at arm's length in the sun (common practice, no source).
    [Fact]
    public void Lettering_IsReadableOnAPhone() =>
        Assert.All(
            new[] { Palette.Name, Palette.Note, Palette.Remark, Palette.OutWord, Palette.DoubtedWord, Palette.NextWord },
            l => Assert.True(l.Size >= 12)
        );

    // WCAG 2.2, relative luminance and contrast ratio (1.4.3: 4.5 for text, 1.4.11: 3 for marks).
    [Fact]
    public void Lettering_OnWhite_HasTheContrastOfWcag() =>
        Assert.All(
            new[] { Palette.Name, Palette.Note, Palette.Remark, Palette.OutWord, Palette.DoubtedWord, Palette.NextWord, Palette.Sign },
            l => Assert.True(ContrastOnWhite(l.Fill) >= 4.5, l.Name)
        );

    private static double ContrastOnWhite(string colour)
    {
        double Channel(int at)
        {
            var c = Convert.ToInt32(colour.Substring(at, 2), 16) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }

        var luminance = (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
        return 1.05 / (luminance + 0.05);
    }
}
