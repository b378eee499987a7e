using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Photos;

/// <summary>What a file is, by its first bytes; its name and what the browser says of it count for nothing.</summary>
internal static class PhotoType
{
    private static readonly (string Name, byte[] Start, int At)[] s_known =
    [
        (Texts.Say("drawing.photo-type.a-jpeg-picture"), [0xFF, 0xD8, 0xFF], 0),
        (Texts.Say("drawing.photo-type.a-png-picture"), [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A], 0),
        (Texts.Say("drawing.photo-type.a-gif-picture"), "GIF8"u8.ToArray(), 0),
        (Texts.Say("drawing.photo-type.a-webp-picture"), "WEBP"u8.ToArray(), 8),
        (Texts.Say("drawing.photo-type.a-heic-picture"), "ftyphei"u8.ToArray(), 4),
        (Texts.Say("drawing.photo-type.a-heic-picture"), "ftypmif1"u8.ToArray(), 4),
        (Texts.Say("drawing.photo-type.an-avif-picture"), "ftypavif"u8.ToArray(), 4),
        (Texts.Say("drawing.photo-type.a-film"), "ftyp"u8.ToArray(), 4),
        (Texts.Say("drawing.photo-type.a-tiff-picture"), [(byte)'I', (byte)'I', 42, 0], 0),
        (Texts.Say("drawing.photo-type.a-tiff-picture"), [(byte)'M', (byte)'M', 0, 42], 0),
        (Texts.Say("drawing.photo-type.a-bmp-picture"), "BM"u8.ToArray(), 0),
        (Texts.Say("drawing.photo-type.a-pdf"), "%PDF"u8.ToArray(), 0),
        (Texts.Say("drawing.photo-type.an-svg-drawing"), "<svg"u8.ToArray(), 0),
        (Texts.Say("drawing.photo-type.a-text-file"), "<?xml"u8.ToArray(), 0),
        (Texts.Say("drawing.photo-type.a-zip-archive"), "PK"u8.ToArray(), 0),
    ];

    /// <summary>The type in words; null when it is none of those known.</summary>
    public static string? NameOf(ReadOnlySpan<byte> file)
    {
        foreach (var (name, start, at) in s_known)
        {
            if (file.Length >= at + start.Length && file.Slice(at, start.Length).SequenceEqual(start))
            {
                return name;
            }
        }

        return null;
    }

    public static bool IsTaken(string? name) => name is "a JPEG picture" or "a PNG picture";
}
