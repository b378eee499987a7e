using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Phones;

/// <summary>Which phones on the home network are let in. It is said on the laptop; a stranger has only the page that asks for the code.</summary>
public static class PhonesRoom
{
    /// <summary>The room. It has no link among the rooms: it is needed once for each phone.</summary>
    public static Room Room { get; } = new("Phones", _ => null, Map);

    /// <summary>What everybody who was not let in is answered, whatever he asks for.</summary>
    internal static IResult Stranger(FieldFaults? faults = null, string name = "") =>
        Show.Page<PairingPage>(new PairingView(name, faults ?? new FieldFaults()), StatusCodes.Status401Unauthorized);

    /// <summary>A code for one phone, made because somebody at this machine asked for it. The one before is good no longer.</summary>
    public static string MakeCode(IServiceProvider services) => services.GetRequiredService<PairingCode>().MakeNew();

    private static void Map(RoomRoutes routes)
    {
        routes.Page("/phones", request => Show.Page<PhonesPage>(PhonesView.Of(request)));
        routes.Change("/phones/codes", MakeCode);
        routes.Change("/phones/{phone}/removal", ShutOut);
        routes.Change(LanDoor.PairingPath, LetIn);
    }

    private static IResult MakeCode(PageRequest request)
    {
        MakeCode(request.Http.RequestServices);
        return Show.Redirect("/phones");
    }

    private static IResult ShutOut(PageRequest request)
    {
        From<PhoneList>(request).ShutOut(request.Part("phone"));
        return Show.Redirect("/phones");
    }

    private static IResult LetIn(PageRequest request)
    {
        if (From<LanDoor>(request).IsFromThisMachine(request.Http))
        {
            return Show.Redirect("/phones");
        }

        var faults = new FieldFaults();
        var name = request.RequiredText("name", Say("phones.a-name-for-this"), faults, most: 60);
        if (faults.Any)
        {
            return Stranger(faults, name); // before the code is looked at, so that it costs no try
        }

        switch (From<PairingCode>(request).Try(request.Field("code")))
        {
            case PairingCode.Outcome.Right:
                Remember(request.Http, From<PhoneList>(request).LetIn(name));
                return Show.Redirect("/");
            case PairingCode.Outcome.Wrong:
                faults.Add("code", Say("phones.this-is-not-the"));
                break;
            default:
                faults.Add("code", Say("phones.no-code-is-good"));
                break;
        }

        return Stranger(faults, name);
    }

    private static void Remember(HttpContext http, string cookie) =>
        http.Response.Cookies.Append(
            LanDoor.Cookie,
            cookie,
            new CookieOptions
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Strict,
                Secure = http.Request.IsHttps,
                Path = "/",
                MaxAge = TimeSpan.FromDays(365),
                IsEssential = true,
            }
        );

    private static T From<T>(PageRequest request)
        where T : notnull => request.Http.RequestServices.GetRequiredService<T>();
}
