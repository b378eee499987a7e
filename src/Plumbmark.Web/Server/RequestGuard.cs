using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;
using Plumbmark.Store;
using Plumbmark.Web.Phones;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Server;

/// <summary>What every request passes before any room sees it.</summary>
internal sealed class RequestGuard(RequestDelegate next, IAntiforgery antiforgery, LanDoor door, ILogger<RequestGuard> log)
{
    // No inline script or style anywhere, nothing from elsewhere, nothing sent elsewhere, no page of ours inside another's.
    private const string ContentSecurityPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self'; font-src 'self'; "
        + "manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    public async Task InvokeAsync(HttpContext http)
    {
        AddHeaders(http.Response.Headers);
        try
        {
            await (await Refusal(http) is { } refusal ? refusal.ExecuteAsync(http) : next(http));
        }
        catch (StoreUnusableException e) when (!http.Response.HasStarted)
        {
            await Show.Sorry(Say("page.guard.the-journal-cannot-be"), e.Message, StatusCodes.Status503ServiceUnavailable)
                .ExecuteAsync(http);
        }
        catch (NoAnswerException) when (!http.Response.HasStarted)
        {
            // The log was told when it was tried first.
            await Show.NoAnswer(http.Request.RouteValues["car"]).ExecuteAsync(http);
        }
        catch (BadHttpRequestException e) when (!http.Response.HasStarted)
        {
            await Show.Sorry(Say("page.guard.not-understood"), Say("page.guard.what-the-browser-sent"), e.StatusCode).ExecuteAsync(http);
        }
        catch (OperationCanceledException) when (http.RequestAborted.IsCancellationRequested)
        {
            // The visitor has gone; there is nobody to tell.
        }
        catch (InvalidDataException) when (!http.Response.HasStarted)
        {
            await Show.Sorry(Say("page.guard.not-understood"), Say("page.guard.the-form-is-too"), StatusCodes.Status400BadRequest)
                .ExecuteAsync(http);
        }
        catch (Exception e) when (e is not OutOfMemoryException && !http.Response.HasStarted)
        {
            log.LogError(e, "A page failed: {Method} {Path}", http.Request.Method, http.Request.Path);
            http.Response.Clear();
            AddHeaders(http.Response.Headers);
            await Show.Sorry(
                    Say("page.guard.something-in-the-program"),
                    Say("page.guard.what-was-kept-before"),
                    StatusCodes.Status500InternalServerError
                )
                .ExecuteAsync(http);
        }
    }

    private static void AddHeaders(IHeaderDictionary headers)
    {
        headers.ContentSecurityPolicy = ContentSecurityPolicy;
        headers.XContentTypeOptions = "nosniff";
        // "no-referrer" would make browsers send "Origin: null" with a form, and then the origin could not be checked.
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "geolocation=(), microphone=(), payment=(), usb=()";
        headers.CacheControl = "no-store";
    }

    private async Task<IResult?> Refusal(HttpContext http)
    {
        // A strange name in Host means that a page elsewhere has pointed its own name at this machine (DNS rebinding).
        if (!door.IsForHere(http))
        {
            return Results.Text($"{Say("page.guard.address")}\n", statusCode: 421);
        }

        if (door.Refusal(http) is { } refusal)
        {
            return refusal;
        }

        if (HttpMethods.IsGet(http.Request.Method) || HttpMethods.IsHead(http.Request.Method))
        {
            return null;
        }

        if (!HttpMethods.IsPost(http.Request.Method))
        {
            return Results.Text($"{Say("page.guard.method")}\n", statusCode: StatusCodes.Status405MethodNotAllowed);
        }

        return IsFromHere(http.Request) && await HasToken(http)
            ? null
            : Show.Sorry(Say("page.guard.not-sent-from-a"), Say("page.guard.nothing-was-changed-if"), StatusCodes.Status400BadRequest);
    }

    private async Task<bool> HasToken(HttpContext http)
    {
        if (!http.Request.HasFormContentType)
        {
            return false;
        }

        // Read here, because the token's reader hides what was wrong with the body: too large, too slow, too many fields.
        await http.Request.ReadFormAsync(http.RequestAborted);
        return await antiforgery.IsRequestValidAsync(http);
    }

    private static bool IsFromHere(HttpRequest request)
    {
        var origin = request.Headers.Origin.ToString();
        // Where the browser says itself whence it comes, over loopback always, only a page of ours will do.
        return request.Headers["Sec-Fetch-Site"].ToString() is "" or "same-origin"
            && (origin.Length == 0 || origin == $"{request.Scheme}://{request.Host}");
    }
}
