using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Plumbmark.Web.Phones;

/// <summary>This machine's own addresses on a home network, as the system lists them; nothing is asked of the network.</summary>
public static class HomeNetwork
{
    /// <summary>The private addresses of this machine, those with a way to a router first.</summary>
    public static IReadOnlyList<IPAddress> Addresses() =>
        [
            .. NetworkInterface
                .GetAllNetworkInterfaces()
                .Where(n =>
                    n
                        is {
                            OperationalStatus: OperationalStatus.Up,
                            NetworkInterfaceType: not (NetworkInterfaceType.Loopback or NetworkInterfaceType.Tunnel),
                        }
                )
                .Select(n => n.GetIPProperties())
                .OrderByDescending(p => p.GatewayAddresses.Count > 0)
                .SelectMany(p => p.UnicastAddresses)
                .Select(a => a.Address)
                .Where(IsPrivate)
                .Distinct(),
        ];

    /// <summary>Whether an address belongs to a network that the internet does not reach: RFC 1918 section 3, RFC 3927 section 2.1, and this machine's own.</summary>
    public static bool IsPrivate(IPAddress address)
    {
        if (address.AddressFamily != AddressFamily.InterNetwork)
        {
            return false;
        }

        var bytes = address.GetAddressBytes();
        return bytes[0] is 10 or 127 || bytes is [172, >= 16 and <= 31, ..] or [192, 168, ..] or [169, 254, ..];
    }
}
