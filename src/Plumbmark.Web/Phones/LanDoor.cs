using System.Net;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Phones;

/// <summary>Who comes in from the home network: phones that were let in see everything but the list of phones; everybody else sees the pairing page.</summary>
internal sealed class LanDoor(WebPlace place, PhoneList phones)
{
    public const string Cookie = "plumbmark-phone";
    public const string PairingPath = "/pairing";
    private const long LargestStrangersRequestBytes = 4 * 1024;
    private static readonly object s_phone = new();

    /// <summary>Whether the request came in over this machine's own loopback. What a request says of itself counts for nothing.</summary>
    public bool IsFromThisMachine(HttpContext http) =>
        Plain(http.Connection.LocalIpAddress) is { } local
        && IPAddress.IsLoopback(local)
        && !place.Lan.Contains(local)
        && Plain(http.Connection.RemoteIpAddress) is { } remote
        && IPAddress.IsLoopback(remote);

    /// <summary>Whether the host that a request names is the address it came in at. A name that somebody else can point here is not (DNS rebinding).</summary>
    public bool IsForHere(HttpContext http)
    {
        var host = http.Request.Host.Host;
        var named = IPAddress.TryParse(host.Trim('[', ']'), out var address) ? address : null;
        return IsFromThisMachine(http)
                ? host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (named is not null && IPAddress.IsLoopback(named))
            : named is not null ? named.Equals(Plain(http.Connection.LocalIpAddress))
            : host.Equals($"{Environment.MachineName}.local", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>The phone that a request came from; null for one from this machine.</summary>
    public static Phone? PhoneOf(HttpContext http) => http.Items[s_phone] as Phone;

    /// <summary>Null when the request may go on; else what it is answered.</summary>
    public IResult? Refusal(HttpContext http)
    {
        if (IsFromThisMachine(http))
        {
            return null;
        }

        if (phones.Of(http.Request.Cookies[Cookie]) is { } phone)
        {
            http.Items[s_phone] = phone;
            return http.Request.Path.StartsWithSegments("/phones")
                ? Show.Sorry(Say("phones.door.only-on-the-laptop"), Say("phones.door.which-phones-are-let"), StatusCodes.Status403Forbidden)
                : null;
        }

        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
        {
            size.MaxRequestBodySize = LargestStrangersRequestBytes;
        }

        // Styles and scripts are the same for everybody and tell nothing of any car.
        return BuiltInFiles.Has(http.Request.Path) || (HttpMethods.IsPost(http.Request.Method) && http.Request.Path == PairingPath)
            ? null
            : PhonesRoom.Stranger();
    }

    private static IPAddress? Plain(IPAddress? address) => address is { IsIPv4MappedToIPv6: true } ? address.MapToIPv4() : address;
}
