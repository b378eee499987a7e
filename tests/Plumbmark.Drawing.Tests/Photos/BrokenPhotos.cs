using Plumbmark.Drawing.Photos;
using Plumbmark.Testing;
using Plumbmark.Testing.Fuzzing;
using SkiaSharp;

namespace Plumbmark.Drawing.Tests.Photos;

/// <summary>Photos as a broken upload or a spiteful hand would send them.</summary>
public static class BrokenPhotos
{
    /// <summary>Taken with its pixels alone, as a JPEG that can be seen, or refused in a sentence.</summary>
    public static FuzzSubject Subject { get; } =
        new(
            "photo",
            [Jpeg(24, 16), Jpegs.WithExif(Jpeg(16, 9), 6), Png(24, 16)],
            ["IHDR", "IDAT", "IEND", "PLTE", "Exif", "ICC_PROFILE", "JFIF"],
            Try
        );

    private static (bool, string?) Try(byte[] file) =>
        PhotoIntake.Take(file) switch
        {
            PhotoOutcome.Taken t when t.Width < 1 || t.Height < 1 => (true, "a picture without pixels"),
            PhotoOutcome.Taken t when t.Bytes is not [0xFF, 0xD8, ..] => (true, "what is kept is no JPEG"),
            PhotoOutcome.Taken t when Has(t.Bytes, Jpegs.Whereabouts) => (true, "where it was taken is kept"),
            PhotoOutcome.Refused r => (false, FuzzSubjects.NoSentence(r.Sentence)),
            _ => (true, null),
        };

    private static bool Has(byte[] bytes, string text) => bytes.AsSpan().IndexOf(System.Text.Encoding.ASCII.GetBytes(text)) >= 0;

    private static byte[] Jpeg(int width, int height) => Picture(width, height, SKEncodedImageFormat.Jpeg);

    private static byte[] Png(int width, int height) => Picture(width, height, SKEncodedImageFormat.Png);

    private static byte[] Picture(int width, int height, SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(width, height);
        bitmap.Erase(SKColors.Tan);
        bitmap.SetPixel(width / 2, height / 2, SKColors.Navy);
        using var data = bitmap.Encode(format, 80);
        return data.ToArray();
    }
}
