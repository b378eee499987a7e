using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Plumbmark.Web.Tests.Hostile;

/// <summary>Every address there is, as the app itself has it.</summary>
internal static class Routes
{
    /// <summary>Addresses for a method, with car 1 and something that does not exist in every other place.</summary>
    public static IEnumerable<string> Of(RunningApp app, string method) =>
        app
            .Services.GetRequiredService<IEnumerable<EndpointDataSource>>()
            .SelectMany(s => s.Endpoints)
            .OfType<RouteEndpoint>()
            .Where(e => e.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Contains(method) ?? false)
            .Select(e =>
                "/"
                + string.Join(
                    '/',
                    e.RoutePattern.PathSegments.Select(s =>
                        string.Concat(
                            s.Parts.Select(p =>
                                p switch
                                {
                                    Microsoft.AspNetCore.Routing.Patterns.RoutePatternLiteralPart literal => literal.Content,
                                    Microsoft.AspNetCore.Routing.Patterns.RoutePatternParameterPart { Name: "car" } => "1",
                                    _ => "none",
                                }
                            )
                        )
                    )
                )
            )
            .Distinct();
}
