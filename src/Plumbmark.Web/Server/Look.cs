using Microsoft.AspNetCore.Http;

namespace Plumbmark.Web.Server;

/// <summary>How the pages look in this browser: as the system has it, light, dark, or for bright sun. Kept in a cookie, so that it works without script.</summary>
public static class Look
{
    private const string Cookie = "plumbmark-look";

    /// <summary>The looks: what is sent and kept, and the key of its words. Empty is as the system has it.</summary>
    public static IReadOnlyList<(string Value, string Key)> All { get; } =
    [("", "look.system"), ("light", "look.light"), ("dark", "look.dark"), ("sun", "look.sun")];

    /// <summary>The look chosen; empty for the system's, and for anything that is no look.</summary>
    public static string Of(HttpContext? http) =>
        http?.Request.Cookies[Cookie] is { } chosen && All.Any(l => l.Value == chosen) ? chosen : "";

    /// <summary>Chooses a look and goes back to the page it was chosen on.</summary>
    public static IResult Choose(PageRequest request)
    {
        var look = All.Any(l => l.Value == request.Field("look")) ? request.Field("look") : "";
        request.Http.Response.Cookies.Append(
            Cookie,
            look,
            new CookieOptions
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Strict,
                MaxAge = TimeSpan.FromDays(365),
                Path = "/",
            }
        );
        return Show.Redirect(Back(request.Field("back")));
    }

    /// <summary>Only a path of our own: an address elsewhere becomes the shed.</summary>
    public static string Back(string address) =>
        address.StartsWith('/')
        && !address.StartsWith("//", StringComparison.Ordinal)
        && !address.Contains('\\')
        && !address.Any(char.IsControl)
            ? address
            : "/";
}
