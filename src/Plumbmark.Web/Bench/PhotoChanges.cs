using Microsoft.AspNetCore.Http;
using Plumbmark.Drawing.Photos;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>Photos on a part's card.</summary>
internal static class PhotoChanges
{
    public static IResult Add(CarRequest request)
    {
        if (PartChanges.Part(request) is not { } part)
        {
            return Show.NotFound(BenchRoom.NoSuchPart);
        }

        var faults = new FieldFaults();
        if (request.File("photo") is not { } file)
        {
            faults.Add("photo", Say("bench.photo.no-picture-was-chosen"));
            return Show.Again<PartPage>(PartView.Of(request, faults: faults)!);
        }

        return PhotoIntake
            .Take(PageRequest.Bytes(file, PhotoIntake.LargestFileBytes))
            .Match(
                taken =>
                {
                    var name = request.Journals.KeepPhoto(request.Car.Id, taken.ContentType, taken.Bytes)!;
                    return request.Keep($"{PartChanges.Address(request, part.Id)}#card", car => With(car.File.Parts.Part(part.Id), name));
                },
                sentence =>
                {
                    faults.Add("photo", sentence);
                    return Show.Again<PartPage>(PartView.Of(request, faults: faults)!);
                }
            );
    }

    public static IResult Remove(CarRequest request)
    {
        if (PartChanges.Part(request) is not { } part || !part.Card.Photos.Contains(request.Part("photo")))
        {
            return Show.NotFound(Say("bench.photo.there-is-no-such"));
        }

        var card = part.Card with { Photos = [.. part.Card.Photos.Where(p => p != request.Part("photo"))] };
        return request.Keep($"{PartChanges.Address(request, part.Id)}#card", new Act.BenchPartLaid(part with { Card = card }));
    }

    public static IResult Send(CarRequest request)
    {
        // A backup may bring anything under the name of a picture: what is none by its bytes is not sent, and never under another type.
        if (
            request.Journals.Photo(request.Car.Id, request.Part("photo")) is not { } photo
            || PhotoIntake.ContentTypeOf(photo.Bytes) is not { } contentType
        )
        {
            return Show.NotFound(Say("bench.photo.there-is-no-such-photo"));
        }

        // Its name comes from its content, so it may be kept; but only by this browser.
        request.Http.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        return Results.Bytes(photo.Bytes, contentType);
    }

    private static IReadOnlyList<Act> With(Part? part, string photo) =>
        part is null || part.Card.Photos.Contains(photo)
            ? []
            : [new Act.BenchPartLaid(part with { Card = part.Card with { Photos = [.. part.Card.Photos, photo] } })];
}
