using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.WebUtilities;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Waiting;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Server;

/// <summary>The answers a room can give.</summary>
public static class Show
{
    /// <summary>A page: a component with one parameter, <c>Model</c>.</summary>
    /// <param name="model">What it shows.</param>
    /// <param name="status">200, or 422 when a form is shown again with what was wrong.</param>
    public static IResult Page<TPage>(object model, int status = StatusCodes.Status200OK)
        where TPage : IComponent =>
        new RazorComponentResult<TPage>(new Dictionary<string, object?> { ["Model"] = model })
        {
            StatusCode = status,
            PreventStreamingRendering = true,
        };

    /// <summary>The same form again, with what was wrong in it.</summary>
    public static IResult Again<TPage>(object model)
        where TPage : IComponent => Page<TPage>(model, StatusCodes.Status422UnprocessableEntity);

    /// <summary>To another page after a change, so that reloading does not send the form again.</summary>
    public static IResult Redirect(string address, string? notice = null) =>
        new SeeOther(notice is null ? address : QueryHelpers.AddQueryString(address, "notice", notice));

    /// <summary>Nothing is here.</summary>
    public static IResult NotFound(string sentence) => Sorry(Say("page.show.not-here"), sentence, StatusCodes.Status404NotFound);

    /// <summary>A page that only says what is the matter.</summary>
    public static IResult Sorry(string title, string sentence, int status) => Page<SorryPage>(new SorryPage.View(title, sentence), status);

    /// <summary>What is asked for needs an answer that could not be worked out; its car's readings are still there to be shown.</summary>
    public static IResult NoAnswer(object? car) =>
        Page<SorryPage>(
            new SorryPage.View(NoAnswerWords.Headline, string.Join(' ', NoAnswerWords.Why), car is null ? null : $"/cars/{car}/floor"),
            StatusCodes.Status500InternalServerError
        );

    /// <summary>The change would leave a car that contradicts itself.</summary>
    public static IResult Refused(IReadOnlyList<Fault> faults) =>
        Sorry(
            Say("page.show.that-does-not-go"),
            Say("page.show.nothing-was-changed", string.Join(' ', faults.Select(f => f.Sentence).Distinct().Take(5))),
            StatusCodes.Status422UnprocessableEntity
        );

    /// <summary>A file to keep.</summary>
    public static IResult File(byte[] bytes, string contentType, string name) => TypedResults.File(bytes, contentType, name);

    // 303 says that the next request is a GET; the framework's own redirect results send 302.
    private sealed class SeeOther(string address) : IResult
    {
        public Task ExecuteAsync(HttpContext httpContext)
        {
            if (httpContext.Request.Headers.ContainsKey(WaitingHeaders.Mark))
            {
                httpContext.Response.StatusCode = StatusCodes.Status204NoContent;
                httpContext.Response.Headers[WaitingHeaders.Show] = address;
                return Task.CompletedTask;
            }

            httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
            httpContext.Response.Headers.Location = address;
            return Task.CompletedTask;
        }
    }
}
