using System.Text;

namespace Plumbmark.Testing.Fuzzing;

/// <summary>Makes broken input out of good: a few changes to a good example, as a slip, a broken disk, another program or a spiteful hand would make.</summary>
/// <param name="good">Good examples.</param>
/// <param name="words">Pieces that mean something to this parser.</param>
public sealed class Mutator(IReadOnlyList<byte[]> good, IReadOnlyList<string> words)
{
    private const int MostBytes = 200_000;

    private static readonly byte[][] s_pieces =
    [
        .. new[]
        {
            "1e999",
            "-1e999",
            "1e-999",
            "99999999999999999999999999999999999999",
            "-0",
            "0.0000000000000000000000000001",
            "NaN",
            "Infinity",
            "-1",
            "1/0",
            "0/0",
            "2147483648",
            "9223372036854775808",
            "79228162514264337593543950336",
            "1,5",
            "1.5.5",
            "١٢",
            "１２",
            "½",
            "⅝",
            "\0",
            "\uFEFF",
            "\u202E",
            "\u2028",
            "e\u0301",
            "😀",
            "\\ud800",
            "\\udc00\\ud800",
            "\\u0000",
            "\"",
            "\"\"",
            "'",
            "\\",
            "\r\n",
            "\n",
            "\t",
            ";",
            ",,",
            "[[[[",
            "]]",
            "{\"a\":",
            "}",
            "null",
            "true",
            "[]",
            "{}",
            "\"\"",
            "<script>",
            "=1+1",
            "' or 1=1 --",
            "../../..",
            "%00",
            "A.L",
            "A.L.R",
            ".L",
        }.Select(Encoding.UTF8.GetBytes),
        [0xEF, 0xBB, 0xBF], // byte order mark
        [0xC0, 0x80], // an overlong zero
        [0xED, 0xA0, 0x80], // half a surrogate pair as UTF-8
        [0xFF, 0xFE],
        [0xF4, 0x90, 0x80, 0x80], // beyond Unicode
    ];

    private readonly byte[][] _words = [.. words.Select(Encoding.UTF8.GetBytes)];

    /// <summary>The next input.</summary>
    public byte[] Next(Random random)
    {
        var bytes = (byte[])good[random.Next(good.Count)].Clone();
        for (var changes = 1 + random.Next(1 + random.Next(6)); changes > 0; changes--)
        {
            bytes = Changed(bytes, random);
            if (bytes.Length > MostBytes)
            {
                return bytes[..MostBytes];
            }
        }

        return bytes;
    }

    private byte[] Changed(byte[] bytes, Random random)
    {
        var at = random.Next(bytes.Length + 1);
        var length = Math.Min(bytes.Length - at, 1 << random.Next(9));
        return random.Next(16) switch
        {
            0 => bytes[..at], // cut off
            1 => [.. bytes[..at], .. bytes[(at + length)..]], // a piece missing
            2 => [.. bytes[..(at + length)], .. bytes[at..]], // a piece twice
            3 => Spliced(bytes, at, random),
            4 => Replaced(bytes, at, length, s_pieces[random.Next(s_pieces.Length)]),
            5 or 6 => Replaced(bytes, at, 0, s_pieces[random.Next(s_pieces.Length)]),
            7 => _words.Length == 0 ? bytes : Replaced(bytes, at, 0, _words[random.Next(_words.Length)]),
            8 => Bits(bytes, at, random),
            9 => Repeated(bytes, at, random),
            10 => OtherEncoding(bytes, random),
            11 or 12 => NumberReplaced(bytes, at, random),
            13 or 14 => ValueReplaced(bytes, at, random),
            _ => KeyTwice(bytes, at),
        };
    }

    private static byte[] Replaced(byte[] bytes, int at, int length, byte[] by) => [.. bytes[..at], .. by, .. bytes[(at + length)..]];

    private byte[] Spliced(byte[] bytes, int at, Random random)
    {
        var other = good[random.Next(good.Count)];
        return [.. bytes[..at], .. other[random.Next(other.Length + 1)..]];
    }

    private static byte[] Bits(byte[] bytes, int at, Random random)
    {
        if (at < bytes.Length)
        {
            bytes[at] = random.Next(2) == 0 ? (byte)random.Next(256) : (byte)(bytes[at] ^ (1 << random.Next(8)));
        }

        return bytes;
    }

    private static byte[] Repeated(byte[] bytes, int at, Random random)
    {
        var piece = s_pieces[random.Next(s_pieces.Length)];
        var times = 1 << random.Next(12);
        return Replaced(bytes, at, 0, [.. Enumerable.Repeat(piece, times).SelectMany(b => b)]);
    }

    private static byte[] OtherEncoding(byte[] bytes, Random random)
    {
        var text = Encoding.UTF8.GetString(bytes);
        return random.Next(4) switch
        {
            0 => Encoding.Unicode.GetBytes(text),
            1 => [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)],
            2 => Encoding.BigEndianUnicode.GetBytes(text),
            _ => Encoding.Latin1.GetBytes(text),
        };
    }

    /// <summary>The number at or behind a place, as another.</summary>
    private byte[] NumberReplaced(byte[] bytes, int at, Random random)
    {
        var start = Array.FindIndex(bytes, at, b => b is >= (byte)'0' and <= (byte)'9');
        if (start < 0)
        {
            return bytes;
        }

        var end = start;
        while (end < bytes.Length && bytes[end] is >= (byte)'0' and <= (byte)'9' or (byte)'.' && end < bytes.Length)
        {
            end++;
        }

        return Replaced(bytes, start, end - start, s_pieces[random.Next(20)]);
    }

    /// <summary>The quoted text at or behind a place, as another value.</summary>
    private byte[] ValueReplaced(byte[] bytes, int at, Random random)
    {
        var start = Array.IndexOf(bytes, (byte)'"', at);
        var end = start < 0 ? -1 : Array.IndexOf(bytes, (byte)'"', start + 1);
        var pieces = random.Next(2) == 0 && _words.Length > 0 ? _words : s_pieces;
        var piece = pieces[random.Next(pieces.Length)];
        return end < 0 ? bytes
            : random.Next(3) == 0 ? Replaced(bytes, start, end + 1 - start, piece)
            : Replaced(bytes, start + 1, end - start - 1, piece);
    }

    /// <summary>The line at a place, twice.</summary>
    private static byte[] KeyTwice(byte[] bytes, int at)
    {
        var start = at == 0 ? 0 : Array.LastIndexOf(bytes, (byte)'\n', at - 1) + 1;
        var end = Array.IndexOf(bytes, (byte)'\n', at);
        return end < 0 ? bytes : [.. bytes[..(end + 1)], .. bytes[start..]];
    }
}
