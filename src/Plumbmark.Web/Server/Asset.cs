using System.IO.Compression;
using System.Security.Cryptography;

namespace Plumbmark.Web.Server;

/// <summary>A style, script or picture that is built into the program, with its bytes plain and compressed.</summary>
internal sealed class Asset
{
    private readonly Lazy<byte[]> _compressed;

    public Asset(string name, byte[] bytes)
    {
        Bytes = bytes;
        ContentType = Path.GetExtension(name) switch
        {
            ".css" => "text/css; charset=utf-8",
            ".js" => "text/javascript; charset=utf-8",
            ".svg" => "image/svg+xml",
            ".webmanifest" => "application/manifest+json",
            _ => "application/octet-stream",
        };
        // The address changes with the content, so that a browser may keep it for ever.
        Address = $"/assets/{Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 6))}/{name}";
        _compressed = new Lazy<byte[]>(() => Compress(bytes));
    }

    public string Address { get; }

    public string ContentType { get; }

    public byte[] Bytes { get; }

    public byte[] Compressed => _compressed.Value;

    private static byte[] Compress(byte[] bytes)
    {
        using var memory = new MemoryStream();
        using (var brotli = new BrotliStream(memory, CompressionLevel.SmallestSize))
        {
            brotli.Write(bytes);
        }

        return memory.ToArray();
    }
}
