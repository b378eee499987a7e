using System.Text;
using Plumbmark.Drawing.Photos;
using Plumbmark.Testing;
using SkiaSharp;

namespace Plumbmark.Drawing.Tests.Photos;

/// <summary>Only pixels are kept: upright, of a sensible size, and nothing of where and when. Everything else is refused in words.</summary>
public class PhotoIntakeTests
{
    // Exif 2.3, tag 0x0112: on which side of the upright picture the stored first row and first column lie.
    [Theory]
    [InlineData(1, "top", "left")]
    [InlineData(2, "top", "right")]
    [InlineData(3, "bottom", "right")]
    [InlineData(4, "bottom", "left")]
    [InlineData(5, "left", "top")]
    [InlineData(6, "right", "top")]
    [InlineData(7, "right", "bottom")]
    [InlineData(8, "left", "bottom")]
    public void Photo_HeldAnyWay_IsUpright(int orientation, string firstRow, string firstColumn)
    {
        // Upright: 160 across, 96 down, with four colours; stored as the camera would have when held that way.
        using var stored = new SKBitmap(firstRow is "left" or "right" ? 96 : 160, firstRow is "left" or "right" ? 160 : 96);
        for (var row = 0; row < stored.Height; row++)
        {
            for (var column = 0; column < stored.Width; column++)
            {
                var (a, b) = (Place(firstRow, row), Place(firstColumn, column));
                stored.SetPixel(column, row, Colour(a.X ?? b.X!.Value, a.Y ?? b.Y!.Value));
            }
        }

        var taken = Assert.IsType<PhotoOutcome.Taken>(PhotoIntake.Take(Jpegs.WithExif(Jpeg(stored), orientation)));
        Assert.Equal((160, 96), (taken.Width, taken.Height));
        using var upright = SKBitmap.Decode(taken.Bytes);
        foreach (var (x, y) in new[] { (40, 24), (120, 24), (40, 72), (120, 72) })
        {
            var (seen, meant) = (upright.GetPixel(x, y), Colour(x, y));
            Assert.True(
                Math.Abs(seen.Red - meant.Red) + Math.Abs(seen.Green - meant.Green) + Math.Abs(seen.Blue - meant.Blue) < 60,
                $"{x},{y}: {seen}"
            );
        }
    }

    [Fact]
    public void Photo_KeepsNothingOfWhereAndWhen()
    {
        using var bitmap = new SKBitmap(64, 48);
        var file = Jpegs.WithExif(Jpeg(bitmap), 1);
        Assert.Contains(Jpegs.Whereabouts, Encoding.Latin1.GetString(file), StringComparison.Ordinal);
        var kept = Encoding.Latin1.GetString(Assert.IsType<PhotoOutcome.Taken>(PhotoIntake.Take(file)).Bytes);
        Assert.DoesNotContain(Jpegs.Whereabouts, kept, StringComparison.Ordinal);
        Assert.DoesNotContain("Exif", kept, StringComparison.Ordinal);
        Assert.DoesNotContain("http://ns.adobe.com", kept, StringComparison.Ordinal);
    }

    [Fact]
    public void LargePhoto_IsMadeSmaller_SeeThroughPngStandsOnWhite()
    {
        using var large = new SKBitmap(5000, 3000);
        var taken = Assert.IsType<PhotoOutcome.Taken>(PhotoIntake.Take(Jpeg(large)));
        Assert.Equal((2400, 1440), (taken.Width, taken.Height));
        using var clear = new SKBitmap(40, 30);
        clear.Erase(SKColors.Transparent);
        using var png = clear.Encode(SKEncodedImageFormat.Png, 100);
        var onPaper = Assert.IsType<PhotoOutcome.Taken>(PhotoIntake.Take(png.ToArray()));
        using var seen = SKBitmap.Decode(onPaper.Bytes);
        Assert.Equal(SKColors.White, seen.GetPixel(20, 15));
    }

    [Theory]
    [InlineData("GIF89a", "a GIF picture")]
    [InlineData("RIFF0000WEBPVP8 ", "a WebP picture")]
    [InlineData("\0\0\0\u0018ftypheic", "a HEIC picture")]
    [InlineData("\0\0\0\u0018ftypmp42", "a film")]
    [InlineData("%PDF-1.7", "a PDF")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg'/>", "an SVG drawing")]
    [InlineData("<script>alert(1)</script>", "no picture that is known here")]
    [InlineData("", "no picture that is known here")]
    public void OtherTypes_AreRefusedInWords(string start, string found)
    {
        var refused = Assert.IsType<PhotoOutcome.Refused>(PhotoIntake.Take(Encoding.Latin1.GetBytes(start)));
        Assert.Contains($"Found {found}; a JPEG or PNG picture is needed", refused.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void CutShort_OrTooLarge_IsRefusedInWords()
    {
        using var bitmap = new SKBitmap(640, 480);
        for (var i = 0; i < 300_000; i++)
        {
            bitmap.SetPixel(i % 640, i / 640, new SKColor((uint)(i * 2654435761)));
        }

        var whole = Jpeg(bitmap);
        var cut = Assert.IsType<PhotoOutcome.Refused>(PhotoIntake.Take(whole[..(whole.Length / 3)]));
        Assert.Contains("cut short", cut.Sentence, StringComparison.Ordinal);
        byte[] justAllowed = [.. whole, .. new byte[PhotoIntake.LargestFileBytes - whole.Length]];
        Assert.IsType<PhotoOutcome.Taken>(PhotoIntake.Take(justAllowed));
        var large = Assert.IsType<PhotoOutcome.Refused>(PhotoIntake.Take([.. justAllowed, 0]));
        Assert.Contains("at most 12 MB", large.Sentence, StringComparison.Ordinal);
    }

    private static (int? X, int? Y) Place(string side, int at) =>
        side switch
        {
            "top" => (null, at),
            "bottom" => (null, 95 - at),
            "left" => (at, null),
            _ => (159 - at, null),
        };

    private static SKColor Colour(int x, int y) =>
        x < 80 ? (y < 48 ? SKColors.Red : SKColors.Blue) : (y < 48 ? SKColors.Lime : SKColors.White);

    private static byte[] Jpeg(SKBitmap bitmap)
    {
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 95);
        return data.ToArray();
    }
}
