using Microsoft.AspNetCore.Http;
using Plumbmark.Drawing.Photos;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>Photos of points and of how readings were taken. Only pixels are kept: no place, no time, no camera.</summary>
internal static class PhotoChanges
{
    public static IResult Take(CarRequest request)
    {
        var car = request.Car.File;
        var point = car.Frame.Point(request.Field("point"))?.Id;
        var reading = car.Readings.FirstOrDefault(r => r.Id == request.Field("reading"));
        var on = car.Frame.Point(request.Field("on"))?.Id ?? point ?? reading?.Points.FirstOrDefault();
        if (on is null || (point is null && reading is null))
        {
            return Show.NotFound(Say("story.no-subject"));
        }

        if (request.File("photo") is not { } file)
        {
            return Show.Sorry(Say("story.photo-none"), Say("story.photo-none-why"), StatusCodes.Status422UnprocessableEntity);
        }

        return PhotoIntake
            .Take(PageRequest.Bytes(file, PhotoIntake.LargestFileBytes))
            .Match(
                taken =>
                {
                    var name = request.Journals.KeepPhoto(request.Car.Id, taken.ContentType, taken.Bytes)!;
                    return request.Keep(
                        $"{AddressOf(request, on)}#photos",
                        new Act.PhotoTaken(new PhotoOf(name, point, point is null ? reading!.Id : null))
                    );
                },
                sentence => Show.Sorry(Say("story.photo-none"), sentence, StatusCodes.Status422UnprocessableEntity)
            );
    }

    public static IResult PutAway(CarRequest request)
    {
        var photo = request.Car.File.Photos.FirstOrDefault(p =>
            p.Photo == request.Part("photo") && (p.Point ?? "") == request.Field("point") && (p.Reading ?? "") == request.Field("reading")
        );
        return photo is null
            ? Show.NotFound(Say("story.no-photo"))
            : request.Keep($"{AddressOf(request, request.Field("on"))}#photos", new Act.PhotoPutAway(photo));
    }

    private static string AddressOf(CarRequest request, string point) => request.Address($"points/{Uri.EscapeDataString(point)}/story");
}
