using System.Diagnostics.CodeAnalysis;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Plumbmark.Store;
using Plumbmark.Web.Waiting;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Server;

/// <summary>Where a room adds its pages (GET) and its changes (POST to a noun, then redirect).</summary>
public sealed class RoomRoutes(IEndpointRouteBuilder endpoints)
{
    private const string Car = "/cars/{car:long}";

    /// <summary>A page that needs no car.</summary>
    public void Page([StringSyntax("Route")] string path, Func<PageRequest, IResult> show) =>
        endpoints.MapGet(path, http => show(Request(http)).ExecuteAsync(http));

    /// <summary>A page about a car, at <c>/cars/7/…</c>; a car that is not there is told without calling the room.</summary>
    public void CarPage([StringSyntax("Route")] string path, Func<CarRequest, IResult> show) =>
        endpoints.MapGet(Under(path), http => WithCar(http, show).ExecuteAsync(http));

    /// <summary>A change that needs no car. The form has been checked against forgery before.</summary>
    public void Change([StringSyntax("Route")] string path, Func<PageRequest, IResult> change) =>
        endpoints.MapPost(
            path,
            async http =>
            {
                await ReadForm(http);
                await change(Request(http)).ExecuteAsync(http);
            }
        );

    /// <summary>A change to a car, at <c>/cars/7/…</c>.</summary>
    public void CarChange([StringSyntax("Route")] string path, Func<CarRequest, IResult> change) =>
        endpoints.MapPost(
            Under(path),
            async http =>
            {
                await ReadForm(http);
                await WithCar(http, change).ExecuteAsync(http);
            }
        );

    private static string Under(string path) => path.Length == 0 ? Car : $"{Car}/{path}";

    private static IResult WithCar(HttpContext http, Func<CarRequest, IResult> answer)
    {
        var request = Request(http);
        if (!long.TryParse(request.Part("car"), out var id) || request.Journals.Car(id) is not { IsBinned: false } open)
        {
            return Show.NotFound(Say("page.route.there-is-no-such"));
        }

        return IsForAnother(http, open)
            ? Show.Sorry(Say("page.route.meant-for-another-car"), Say("page.route.another-journal-is-open"), StatusCodes.Status409Conflict)
            : answer(new CarRequest(http, request.Journals, open));
    }

    /// <summary>What waited on a phone says for which car it was entered.</summary>
    private static bool IsForAnother(HttpContext http, OpenCar car) =>
        http.Request.Headers.TryGetValue(WaitingHeaders.Mark, out var mark) && mark != CarMark.Of(car);

    private static PageRequest Request(HttpContext http) => new(http, http.RequestServices.GetRequiredService<Journals>());

    private static Task ReadForm(HttpContext http) =>
        http.Request.HasFormContentType ? http.Request.ReadFormAsync(http.RequestAborted) : Task.CompletedTask;
}
