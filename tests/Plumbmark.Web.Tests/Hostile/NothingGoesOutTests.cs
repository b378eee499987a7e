using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>
/// The program makes no outgoing connection: nothing it ships of its own or of its packages names a type that could make one. Read from the
/// assemblies' metadata, so that code that no test runs counts too.
/// </summary>
public sealed class NothingGoesOutTests
{
    private static readonly string[] s_connectors =
    [
        "System.Net.Http.HttpClient",
        "System.Net.Http.HttpMessageInvoker",
        "System.Net.Http.SocketsHttpHandler",
        "System.Net.Http.HttpClientHandler",
        "System.Net.Sockets.TcpClient",
        "System.Net.Sockets.UdpClient",
        "System.Net.Sockets.Socket",
        "System.Net.WebRequest",
        "System.Net.HttpWebRequest",
        "System.Net.WebClient",
        "System.Net.FtpWebRequest",
        "System.Net.Dns",
        "System.Net.Mail.SmtpClient",
        "System.Net.NetworkInformation.Ping",
        "System.Net.WebSockets.ClientWebSocket",
        "System.Net.Quic.QuicConnection",
        "System.IO.Pipes.NamedPipeClientStream",
        "System.Diagnostics.Process",
    ];

    [Fact]
    public void NothingShipped_NamesAConnector()
    {
        var shipped = Shipped();
        Assert.Contains(shipped, f => Path.GetFileName(f) == "plumbmark.dll");
        Assert.Contains(shipped, f => Path.GetFileName(f) == "Plumbmark.Web.dll");
        Assert.Contains(shipped, f => Path.GetFileName(f) == "QRCoder.dll");
        var found = shipped.SelectMany(f => TypesNamedIn(f).Intersect(s_connectors).Select(t => $"{Path.GetFileName(f)}: {t}")).ToList();
        Assert.True(found.Count == 0, string.Join("\n", found));
    }

    /// <summary>The check above can fail: this test project itself names an HttpClient.</summary>
    [Fact]
    public void TheCheck_FindsAConnectorWhereThereIsOne() =>
        Assert.Contains("System.Net.Http.HttpClient", TypesNamedIn(typeof(NothingGoesOutTests).Assembly.Location));

    /// <summary>The files that stand beside the program when it is built for a person: what its list of dependencies names.</summary>
    private static List<string> Shipped()
    {
        var folder = AppContext.BaseDirectory;
        using var dependencies = System.Text.Json.JsonDocument.Parse(File.ReadAllBytes(Path.Combine(folder, "plumbmark.deps.json")));
        var names = dependencies
            .RootElement.GetProperty("targets")
            .EnumerateObject()
            .SelectMany(t => t.Value.EnumerateObject())
            .Where(l => l.Value.TryGetProperty("runtime", out _))
            .SelectMany(l => l.Value.GetProperty("runtime").EnumerateObject())
            .Select(r => Path.Combine(folder, Path.GetFileName(r.Name)));
        return [.. names.Distinct().Where(File.Exists)];
    }

    private static HashSet<string> TypesNamedIn(string path)
    {
        using var file = new PEReader(File.OpenRead(path));
        var metadata = file.GetMetadataReader();
        return
        [
            .. metadata
                .TypeReferences.Select(metadata.GetTypeReference)
                .Select(t => $"{metadata.GetString(t.Namespace)}.{metadata.GetString(t.Name)}"),
        ];
    }
}
