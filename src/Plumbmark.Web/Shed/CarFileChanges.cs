using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Car.Json;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Shed;

/// <summary>Car files that come in and go out.</summary>
internal static class CarFileChanges
{
    public static IResult BringIn(PageRequest request)
    {
        if (request.File("file") is not { } file)
        {
            var faults = new FieldFaults();
            faults.Add("file", Say("shed.car-file.no-file-was-chosen"));
            return Show.Again<ShedPage>(ShedView.Of(request, faults));
        }

        return CarFileReader
            .Read(PageRequest.Bytes(file, JsonText.LargestFileBytes))
            .Match(
                car => Show.Redirect($"/cars/{request.Journals.Add(car, request.FormName()).Id}/floor"),
                faults => Show.Again<ShedPage>(ShedView.Of(request, refused: new ShedView.RefusedFile(ShownName(file.FileName), faults)))
            );
    }

    public static IResult TakeOut(CarRequest request) =>
        Show.File(CarFileWriter.Write(request.Car.File), "application/json", $"{DownloadName.Of(Words.NameOf(request.Car))}.json");

    /// <summary>A file name is only shown, never used as a path.</summary>
    private static string ShownName(string name) => name.Length > 80 ? name[..80] + "…" : name;
}
