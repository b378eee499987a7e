namespace Plumbmark.Drawing.Photos;

/// <summary>What a file is, by its first bytes; its name and what the browser says of it count for nothing.</summary>
internal static class PhotoType
{
    private static readonly (string Name, byte[] Start, int At)[] s_known =
    [
        ("a JPEG picture", [0xFF, 0xD8, 0xFF], 0),
        ("a PNG picture", [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A], 0),
        ("a GIF picture", "GIF8"u8.ToArray(), 0),
        ("a WebP picture", "WEBP"u8.ToArray(), 8),
        ("a HEIC picture", "ftyphei"u8.ToArray(), 4),
        ("a HEIC picture", "ftypmif1"u8.ToArray(), 4),
        ("an AVIF picture", "ftypavif"u8.ToArray(), 4),
        ("a film", "ftyp"u8.ToArray(), 4),
        ("a TIFF picture", [(byte)'I', (byte)'I', 42, 0], 0),
        ("a TIFF picture", [(byte)'M', (byte)'M', 0, 42], 0),
        ("a BMP picture", "BM"u8.ToArray(), 0),
        ("a PDF", "%PDF"u8.ToArray(), 0),
        ("an SVG drawing", "<svg"u8.ToArray(), 0),
        ("a text file", "<?xml"u8.ToArray(), 0),
        ("a ZIP archive", "PK"u8.ToArray(), 0),
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
