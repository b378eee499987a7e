using System.Diagnostics;
using Plumbmark.Drawing.Photos;
using SkiaSharp;

namespace Plumbmark.Drawing.Tests.Photos;

/// <summary>Small files that ask for much: memory, or time.</summary>
public sealed class PhotoBombFaults
{
    // 30,000 walks over four million pixels, asked for with twelve bytes each: minutes of work. The decoder itself gives up after a hundred; this holds it to it.
    [Fact]
    public void Jpeg_OfThousandsOfPasses_IsRefused_LongBeforeTheyAreDone()
    {
        var began = Stopwatch.GetTimestamp();
        Assert.Contains("cannot be read to its end", Refused(Progressive(2000, 2000, 30_000)), StringComparison.Ordinal);
        Assert.True(Stopwatch.GetElapsedTime(began) < TimeSpan.FromSeconds(10), "All of them were done.");
    }

    [Fact]
    public void Jpeg_OfFewPasses_IsTaken() => Assert.Equal("taken", Refused(Progressive(640, 480, 10)));

    [Fact]
    public void Png_ThatClaimsMoreThanItShould_IsRefused_BeforeMemoryIsGivenToIt()
    {
        using var bitmap = new SKBitmap(new SKImageInfo(9000, 9000, SKColorType.Gray8));
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        var file = data.ToArray();
        Assert.True(file.Length < 1_000_000, $"{file.Length} bytes: no bomb.");
        Assert.Contains("at most 40 million", Refused(file), StringComparison.Ordinal);
    }

    private static string Refused(byte[] file) => PhotoIntake.Take(file).Match(_ => "taken", sentence => sentence);

    /// <summary>A grey progressive JPEG after ITU-T T.81: a frame header, one Huffman table of each class with one code, and scans without data.</summary>
    private static byte[] Progressive(int width, int height, int scans)
    {
        var file = new List<byte> { 0xFF, 0xD8, 0xFF, 0xDB, 0, 67, 0 };
        file.AddRange(Enumerable.Repeat((byte)1, 64));
        file.AddRange([0xFF, 0xC2, 0, 11, 8, (byte)(height >> 8), (byte)height, (byte)(width >> 8), (byte)width, 1, 1, 0x11, 0]);
        foreach (byte table in (byte[])[0x00, 0x10])
        {
            file.AddRange([0xFF, 0xC4, 0, 20, table, 1, .. new byte[15], 0]);
        }

        for (var i = 0; i < scans; i++)
        {
            // The first lays the mean of each block, the others one frequency after the other.
            var frequency = (byte)(i == 0 ? 0 : 1 + ((i - 1) % 63));
            file.AddRange([0xFF, 0xDA, 0, 8, 1, 1, 0, frequency, frequency, 0]);
        }

        file.AddRange([0xFF, 0xD9]);
        return [.. file];
    }
}
