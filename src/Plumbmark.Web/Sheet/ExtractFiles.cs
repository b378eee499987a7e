using Microsoft.AspNetCore.Http;
using Plumbmark.Drawing.Exchange;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Sheet;

/// <summary>Readings, results and drawings as files for other programs.</summary>
internal static class ExtractFiles
{
    public static IResult Send(CarRequest request) =>
        Extract.Of(request.Part("what")) is { } extract
            ? Show.File(
                extract.Make(request.Car.File, request.Answers().For(request.Car)),
                extract.ContentType,
                $"{DownloadName.Of(Layout.Words.NameOf(request.Car))}-{extract.Word}.{extract.Ending}"
            )
            : Show.NotFound("There is nothing of that name to take out.");
}
