using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Waiting;

/// <summary>Forms that wait on a phone while there is no connection. It has no page of its own: the list stands on every page.</summary>
public static class WaitingRoom
{
    /// <summary>The room; it has no link, because nobody needs to go there.</summary>
    public static Room Room { get; } = new("Waiting", _ => null, Map);

    private static void Map(RoomRoutes routes) => routes.Page("/form-token", FreshToken);

    /// <summary>A token for forms that were opened before this app was started. Another site cannot read it: nothing here is shared across origins.</summary>
    private static IResult FreshToken(PageRequest request) =>
        Results.Text(request.Http.RequestServices.GetRequiredService<IAntiforgery>().GetAndStoreTokens(request.Http).RequestToken);
}
