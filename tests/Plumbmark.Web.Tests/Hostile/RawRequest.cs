using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>A request written byte by byte, as no decent client would send it.</summary>
internal static class RawRequest
{
    /// <summary>The whole answer; empty when the connection was closed without one.</summary>
    public static async Task<string> Send(Uri to, string request, CancellationToken stop)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Parse(to.Host), to.Port, stop);
        await using var stream = client.GetStream();
        await stream.WriteAsync(Encoding.Latin1.GetBytes(request), stop);
        return await Rest(stream, stop);
    }

    /// <summary>What comes until the connection is closed.</summary>
    public static async Task<string> Rest(Stream stream, CancellationToken stop)
    {
        using var answer = new MemoryStream();
        try
        {
            await stream.CopyToAsync(answer, stop);
        }
        catch (IOException)
        {
            // Closed with a reset; what came before counts.
        }

        return Encoding.Latin1.GetString(answer.ToArray());
    }

    /// <summary>The status of an answer; 0 when there was none.</summary>
    public static int StatusOf(string answer) =>
        answer.StartsWith("HTTP/1.1 ", StringComparison.Ordinal) ? int.Parse(answer.AsSpan(9, 3)) : 0;
}
