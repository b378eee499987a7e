using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Phones;

/// <summary>The phones that are let in, and how another one is.</summary>
/// <param name="Addresses">Where phones reach this machine; none when it is not open to the home network.</param>
/// <param name="Picture">The first address as a picture for a phone's camera, as SVG; null without an address.</param>
/// <param name="Code">The code that is good now; null when there is none.</param>
/// <param name="Minutes">How many minutes it is still good.</param>
/// <param name="WasTriedTooOften">Whether the last code was used up by wrong tries.</param>
/// <param name="Phones">The phones.</param>
public sealed record PhonesView(
    IReadOnlyList<string> Addresses,
    string? Picture,
    string? Code,
    int Minutes,
    bool WasTriedTooOften,
    IReadOnlyList<PhonesView.Line> Phones
)
{
    /// <summary>A phone in the list.</summary>
    public sealed record Line(string Id, string Name, string Since, string Seen);

    /// <summary>The list as it is.</summary>
    internal static PhonesView Of(PageRequest request)
    {
        var services = request.Http.RequestServices;
        var lan = services.GetRequiredService<WebPlace>().Lan.Select(a => a.ToString()).ToHashSet(StringComparer.Ordinal);
        var addresses = services
            .GetRequiredService<IServer>()
            .Features.Get<IServerAddressesFeature>()!
            .Addresses.Where(a => lan.Contains(new Uri(a).Host))
            .ToList();
        var pairing = services.GetRequiredService<PairingCode>();
        var good = pairing.Good();
        return new PhonesView(
            addresses,
            addresses.Count == 0 ? null : QrPicture.Svg($"{addresses[0]}/"),
            good is { } g ? $"{g.Code[..3]} {g.Code[3..]}" : null,
            good?.Minutes ?? 0,
            pairing.WasTriedTooOften,
            [.. services.GetRequiredService<PhoneList>().All().Select(p => new Line(p.Id, p.Name, Day(p.Since), Moment(p.Seen)))]
        );
    }

    private static string Day(DateTimeOffset at) => at.ToLocalTime().ToString("yyyy-MM-dd");

    private static string Moment(DateTimeOffset at) => at.ToLocalTime().ToString("yyyy-MM-dd HH:mm");
}
