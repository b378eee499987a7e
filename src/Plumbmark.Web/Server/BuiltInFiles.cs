using System.Collections.Frozen;
using System.Reflection;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Plumbmark.Drawing.Pictures;

namespace Plumbmark.Web.Server;

/// <summary>What is built in and sent as it is. No request is ever turned into a path on the disk.</summary>
public static class BuiltInFiles
{
    private static readonly Assembly s_assembly = typeof(BuiltInFiles).Assembly;
    private static readonly FrozenDictionary<string, Asset> s_byName = All()
        .ToFrozenDictionary(a => a.Name, a => a.Asset, StringComparer.Ordinal);
    private static readonly FrozenDictionary<string, Asset> s_byAddress = s_byName.Values.ToFrozenDictionary(
        a => a.Address,
        StringComparer.Ordinal
    );

    /// <summary>The address of a file, by its name without folders: <c>plumbmark.js</c>. All styles together are <c>plumbmark.css</c>.</summary>
    /// <exception cref="KeyNotFoundException">No such file is built in.</exception>
    public static string Address(string name) => s_byName[name].Address;

    /// <summary>Whether an address is that of a file.</summary>
    internal static bool Has(string? address) => address is not null && s_byAddress.ContainsKey(address);

    internal static void Map(IEndpointRouteBuilder endpoints) =>
        endpoints.MapGet(
            "/assets/{hash}/{name}",
            http => (s_byAddress.TryGetValue(http.Request.Path, out var asset) ? Send(http, asset) : Results.NotFound()).ExecuteAsync(http)
        );

    private static IResult Send(HttpContext http, Asset asset)
    {
        http.Response.Headers.CacheControl = "public, max-age=31536000, immutable";
        http.Response.Headers.Vary = "Accept-Encoding";
        var brotli = http.Request.Headers.AcceptEncoding.ToString().Contains("br", StringComparison.Ordinal);
        if (brotli)
        {
            http.Response.Headers.ContentEncoding = "br";
        }

        return Results.Bytes(brotli ? asset.Compressed : asset.Bytes, asset.ContentType);
    }

    private static IEnumerable<(string Name, Asset Asset)> All()
    {
        var names = s_assembly.GetManifestResourceNames().Order(StringComparer.Ordinal).ToList();
        var styles = names.Where(n => n.EndsWith(".css", StringComparison.Ordinal));
        // The common styles first, so that a room may refine them.
        var bundle = styles
            .OrderByDescending(n => n.StartsWith("Styles", StringComparison.Ordinal))
            .SelectMany(n => (byte[])[.. Bytes(n), (byte)'\n']);
        yield return ("plumbmark.css", new Asset("plumbmark.css", [.. bundle, .. Encoding.UTF8.GetBytes(Palette.StyleSheet)]));
        foreach (var name in names.Where(n => Path.GetExtension(n) is ".js" or ".svg" or ".webmanifest"))
        {
            var file = name[(name.LastIndexOfAny(['/', '\\']) + 1)..];
            yield return (file, new Asset(file, Bytes(name)));
        }
    }

    private static byte[] Bytes(string resource)
    {
        using var stream = s_assembly.GetManifestResourceStream(resource)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
