using Microsoft.Extensions.DependencyInjection;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>How a room gets at the answers.</summary>
public static class FloorAnswersOfRequest
{
    /// <summary>The answers that all pages share.</summary>
    public static FloorAnswers Answers(this PageRequest request) => request.Http.RequestServices.GetRequiredService<FloorAnswers>();
}
