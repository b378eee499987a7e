using Microsoft.AspNetCore.Http;
using Plumbmark.Drawing.Exchange;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

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
            : Show.NotFound(Say("sheet.extract.there-is-nothing-of"));
}
