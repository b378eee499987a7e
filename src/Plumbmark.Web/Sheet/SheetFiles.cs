using Microsoft.AspNetCore.Http;
using Plumbmark.Drawing.Sheets;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Floor.Round;
using Plumbmark.Inspection.Road;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Sheet;

/// <summary>The sheets as PDF.</summary>
internal static class SheetFiles
{
    public static IResult Send(CarRequest request)
    {
        var car = request.Car.File;
        var answer = request.Answers().For(request.Car);
        var options = Options(request);
        byte[]? pdf = request.Part("kind") switch
        {
            "frame" => FrameSheet.Pdf(car, answer, options),
            "workshop" => WorkshopSheet.Pdf(car, answer, options),
            SheetKind.Form => Form(request, options),
            "parts" => PartsSheet.Pdf(car, BenchInspection.Of(car), options),
            "press" => PressSheet.Pdf(car, options),
            "road" => RoadSheet.Pdf(car, RoadInspection.Of(car), options),
            SheetKind.BeforeAfter => BeforeAndAfter(request, answer, options),
            _ => null,
        };
        return pdf is null ? Show.NotFound(Say("sheet.there-is-no-such")) : Results.Bytes(pdf, "application/pdf");
    }

    private static byte[] Form(CarRequest request, SheetOptions options)
    {
        var number = new FormNumber(request.Car.Sequence, FormNumber.ScopeOf(request.Query("ask")));
        return BlankForm.Pdf(request.Car.File, MeasuringRound.Of(request.Car.File, number.Scope), options, $"{number}");
    }

    private static byte[]? BeforeAndAfter(CarRequest request, FloorAnswer answer, SheetOptions options)
    {
        if (!long.TryParse(request.Query("before"), out var sequence) || sequence < 1)
        {
            return null;
        }

        var before = Moment.At(request.Car, sequence);
        return BeforeAfterSheet.Pdf(before, FloorInspection.Of(before), request.Car.File, answer, options);
    }

    private static SheetOptions Options(CarRequest request) =>
        new(
            request.Query("paper") == "letter" ? Paper.Letter : Paper.A4,
            DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime),
            typeof(SheetFiles).Assembly.GetName().Version is { } v ? $"{v.Major}.{v.Minor}.{v.Build}" : "",
            request.Query("by") is { Length: > 0 and <= 80 } by ? by : null,
            ShowsSerial: request.Query("serial") == "yes"
        );
}
