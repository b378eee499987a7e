using System.Net;
using Microsoft.AspNetCore.Http;

namespace Plumbmark.Web.Server;

/// <summary>The names under which this program answers: this machine's own, and no other.</summary>
internal static class AllowedHosts
{
    /// <summary>Whether a request for this host may be answered.</summary>
    public static bool Allow(HostString host) =>
        host.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase)
        || (IPAddress.TryParse(host.Host.Trim('[', ']'), out var address) && IPAddress.IsLoopback(address));
}
