using Plumbmark.Inspection.Language;
using SkiaSharp;

namespace Plumbmark.Drawing.Photos;

/// <summary>Takes a photo in: only its pixels. Place, time, camera and whatever else a phone writes into a file never reach the journal.</summary>
/// <remarks>The picture is decoded, turned upright, made smaller where it is larger than a screen can show, and encoded anew as JPEG.</remarks>
public static class PhotoIntake
{
    /// <summary>A larger file is refused: 12 MB.</summary>
    public const int LargestFileBytes = 12 * 1024 * 1024;

    private const int LongestSide = 2400; // sharp on any screen and on a printed page
    private const int Quality = 86;
    private const long MostPixels = 120_000_000; // more than any phone takes; a file that claims more is refused before memory is given to it
    private const long MostPixelsAtOnce = 40_000_000; // 160 MB while it is made smaller; a PNG of a few kilobytes can claim it

    // Twenty phones may send at once; the memory for one picture is there in any case.
    private static readonly Lock s_oneAtATime = new();

    /// <summary>What a picture is sent as, by its bytes; null when it is none of those that are kept.</summary>
    public static string? ContentTypeOf(ReadOnlySpan<byte> bytes) =>
        PhotoType.NameOf(bytes) switch
        {
            "a JPEG picture" => "image/jpeg",
            "a PNG picture" => "image/png",
            _ => null,
        };

    /// <summary>The photo in a file, or why it is not taken.</summary>
    public static PhotoOutcome Take(byte[] file)
    {
        if (file.Length > LargestFileBytes)
        {
            return new PhotoOutcome.Refused(
                Texts.Say(
                    "drawing.photo-intake.the-file-has-mb-a",
                    Texts.Number(file.Length / 1048576.0, "0.0"),
                    LargestFileBytes / 1048576
                )
            );
        }

        var type = PhotoType.NameOf(file);
        if (!PhotoType.IsTaken(type))
        {
            return new PhotoOutcome.Refused(
                Texts.Say("drawing.photo-intake.found-a-jpeg-or-png", type ?? Texts.Say("drawing.photo-intake.no-picture-that-is-known"))
            );
        }

        lock (s_oneAtATime)
        {
            return Decode(file, type!);
        }
    }

    private static PhotoOutcome Decode(byte[] file, string type)
    {
        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.Info.Width <= 0 || codec.Info.Height <= 0)
        {
            return Broken(type);
        }

        if ((long)codec.Info.Width * codec.Info.Height > MostPixels)
        {
            return new PhotoOutcome.Refused(
                Texts.Say("drawing.photo-intake.the-picture-is-by-pixels", codec.Info.Width, codec.Info.Height, MostPixels / 1_000_000)
            );
        }

        // A JPEG can be decoded at a half, a quarter or an eighth straight away, which spares most of the memory.
        var wanted = Math.Min(1f, (float)LongestSide / Math.Max(codec.Info.Width, codec.Info.Height));
        var size = codec.GetScaledDimensions(wanted);
        if ((long)size.Width * size.Height > MostPixelsAtOnce)
        {
            return new PhotoOutcome.Refused(
                Texts.Say("drawing.photo-intake.more-pixels-at-once", codec.Info.Width, codec.Info.Height, MostPixelsAtOnce / 1_000_000)
            );
        }

        using var bitmap = new SKBitmap(new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Premul));
        return codec.GetPixels(bitmap.Info, bitmap.GetPixels()) == SKCodecResult.Success
            ? Encode(bitmap, codec.EncodedOrigin)
            : Broken(type);
    }

    private static PhotoOutcome.Taken Encode(SKBitmap bitmap, SKEncodedOrigin origin)
    {
        var scale = Math.Min(1f, (float)LongestSide / Math.Max(bitmap.Width, bitmap.Height));
        var (width, height) = (Math.Max(1, (int)(bitmap.Width * scale)), Math.Max(1, (int)(bitmap.Height * scale)));
        var isTurned = origin >= SKEncodedOrigin.LeftTop;
        using var surface = SKSurface.Create(
            new SKImageInfo(isTurned ? height : width, isTurned ? width : height, SKColorType.Rgba8888, SKAlphaType.Opaque)
        );
        // A see-through PNG stands on white, as on paper.
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Concat(Upright(origin, width, height));
        using var image = SKImage.FromBitmap(bitmap);
        surface.Canvas.DrawImage(image, new SKRect(0, 0, width, height), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        using var snapshot = surface.Snapshot();
        using var encoded = snapshot.Encode(SKEncodedImageFormat.Jpeg, Quality);
        return new PhotoOutcome.Taken(encoded.ToArray(), "image/jpeg", snapshot.Width, snapshot.Height);
    }

    // The eight ways a camera may have been held (Exif 2.3, tag 0x0112): where the picture's first row and column belong.
    private static SKMatrix Upright(SKEncodedOrigin origin, float w, float h) =>
        origin switch
        {
            SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, w, 0, 1, 0, 0, 0, 1),
            SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, w, 0, -1, h, 0, 0, 1),
            SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, h, 0, 0, 1),
            SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightTop => new SKMatrix(0, -1, h, 1, 0, 0, 0, 0, 1),
            SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, h, -1, 0, w, 0, 0, 1),
            SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, w, 0, 0, 1),
            _ => SKMatrix.Identity,
        };

    private static PhotoOutcome.Refused Broken(string type) => new(Texts.Say("drawing.photo-intake.this-begins-like-but-cannot", type));
}
