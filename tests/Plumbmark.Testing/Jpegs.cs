using System.Buffers.Binary;
using System.Text;

namespace Plumbmark.Testing;

/// <summary>Writes what a phone writes beside the pixels of a JPEG, so that a test can see that none of it is kept.</summary>
public static class Jpegs
{
    /// <summary>A text inside the location data; it must not be found in anything that is kept.</summary>
    public const string Whereabouts = "GPS 12 34 56.7 N 3 21 0.9 W";

    /// <summary>The same JPEG with an Exif block behind its first marker: how the camera was held, and where it was.</summary>
    /// <param name="jpeg">A JPEG without one.</param>
    /// <param name="orientation">1 to 8 (Exif 2.3, tag 0x0112).</param>
    public static byte[] WithExif(byte[] jpeg, int orientation)
    {
        var place = Encoding.ASCII.GetBytes(Whereabouts + "\0");
        // TIFF header (8), count of entries (2), two entries of 12, end of list (4), then the text.
        var exif = new byte[8 + 2 + 24 + 4 + place.Length];
        "II"u8.CopyTo(exif);
        Put16(exif, 2, 42);
        Put32(exif, 4, 8);
        Put16(exif, 8, 2);
        Entry(exif, 10, 0x0112, type: 3, count: 1, orientation);
        Entry(exif, 22, 0x010E, type: 2, place.Length, 38); // ImageDescription, for a text that is easy to look for
        place.CopyTo(exif, 38);
        byte[] block = [.. "Exif\0\0"u8, .. exif];
        var length = block.Length + 2;
        return [.. jpeg[..2], 0xFF, 0xE1, (byte)(length >> 8), (byte)length, .. block, .. jpeg[2..]];
    }

    private static void Entry(byte[] exif, int at, ushort tag, ushort type, int count, int value)
    {
        Put16(exif, at, tag);
        Put16(exif, at + 2, type);
        Put32(exif, at + 4, count);
        Put32(exif, at + 8, value);
    }

    private static void Put16(byte[] bytes, int at, ushort value) => BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(at), value);

    private static void Put32(byte[] bytes, int at, int value) => BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(at), value);
}
