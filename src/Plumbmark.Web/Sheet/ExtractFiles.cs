using System.Text;
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
                $"{FileName(Layout.Words.NameOf(request.Car))}-{extract.Word}.{extract.Ending}"
            )
            : Show.NotFound(Say("sheet.extract.there-is-nothing-of"));

    /// <summary>A name that every file system takes: letters, digits and dashes.</summary>
    private static string FileName(string name)
    {
        var safe = new StringBuilder();
        foreach (var letter in name.ToLowerInvariant())
        {
            safe.Append(char.IsAsciiLetterOrDigit(letter) ? letter : '-');
        }

        var parts = safe.ToString().Split('-', StringSplitOptions.RemoveEmptyEntries);
        return parts.Length == 0 ? "car" : string.Join('-', parts);
    }
}
